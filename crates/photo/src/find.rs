//! Looks for the four marks of the face.

use quarterturn_geometry::{Millimetres, Pixel};

use crate::candidate::Candidate;
use crate::lines::Lines;
use crate::look::Look;
use crate::pitch::Pitch;
use crate::seen::Seen;
use crate::set::Judged;
use crate::ways::{sets, threes};
use crate::{Corner, Found, Grid, Luminance, NotFound};

/// Pictures are looked at smaller first, where blur and noise are small as well: pixels along the longer side.
const LOOKS: [usize; 3] = [1200, 2400, 4800];
/// How far the look round a pixel reaches, as parts of the longer side: marks are from one to five hundredths of it wide.
const REACHES: [usize; 2] = [20, 60];
/// How much larger or smaller than printed the marks may be: ink runs, and a tape is read roughly.
const SIZES: std::ops::Range<f64> = 0.88..1.12;

/// The four marks of the printed face in a picture, where they stand `spacing` apart along each edge.
///
/// The picture is parted into ink and paper by what is round about each pixel; a dot in a white disc in a black ring
/// is taken for a mark; and of all sets with the right dots that one is taken whose marks, laid on the face by the view
/// they give, are all round and alike. It is not taken where another set fits as well, or where the bold lines of the grid
/// are seen to run elsewhere. Where no such set is seen, three of it are enough: the fourth is told from what is left of
/// it, or from the lines, if these prove it.
///
/// # Errors
/// [`NotFound`]: there is no such set, more than one, or one that is mirrored or does not go with `spacing`.
pub fn find(picture: &Luminance, spacing: Millimetres) -> Result<Found, NotFound> {
    let longer = picture.width().max(picture.height());
    let mut seen = Seen::default();
    let mut looks: Vec<Look> = Vec::new();
    let mut factors: Vec<usize> = LOOKS.iter().map(|look| longer.div_ceil(*look)).collect();
    factors.dedup();
    for by in factors {
        let Some(smaller) = picture.shrunk(by) else { continue };
        let look = Look { picture: smaller, by };
        for reach in REACHES {
            seen.add(&look, longer / by / reach);
            let chosen = chosen(&look, &seen, spacing);
            // Of all else a closer look may say otherwise.
            if let Ok(_) | Err(NotFound::Several | NotFound::Mirrored) = chosen {
                return chosen;
            }
        }
        looks.push(look);
    }
    let by_three = looks.iter().find_map(|look| by_three(look, &seen, spacing));
    match (by_three, looks.first()) {
        (Some(settled), _) => settled,
        (None, Some(look)) => chosen(look, &seen, spacing),
        (None, None) => Err(NotFound::TooFew { seen: 0 }),
    }
}

/// The one set that fits.
fn chosen(look: &Look, seen: &Seen, spacing: Millimetres) -> Result<Found, NotFound> {
    let (mut found, mut outcome) = (None, NotFound::NoSet { seen: seen.count() });
    let sets = sets(seen);
    if sets.is_empty() {
        return Err(NotFound::TooFew { seen: seen.count() });
    }
    for set in sets {
        match set.judged(spacing) {
            Judged::No => {}
            Judged::Mirrored => outcome = NotFound::Mirrored,
            Judged::Fits { view, size, unlike } if SIZES.contains(&size) => {
                let pitch = Pitch::of(look, &view, spacing);
                let lines = pitch.map_or_else(
                    || Lines::of(look, &view, spacing),
                    |pitch| Lines::of_step(look, &view, spacing, pitch.bold_mm),
                );
                if lines.disprove() {
                    outcome = NotFound::Lines { said: spacing };
                    continue;
                }
                if found.is_some() {
                    return Err(NotFound::Several);
                }
                let pixels = set.pixels();
                let grid = Grid::of(&lines, pitch, spacing);
                found = Some(Found { pixels, view: *view, told: None, grid, unlike });
            }
            Judged::Fits { size, .. } => {
                outcome = NotFound::Spacing { said: spacing, looks: spacing * size.recip() };
            }
        }
    }
    found.ok_or(outcome)
}

/// The set of three marks and what is left of a fourth, where the lines of the grid prove it and prove no other.
fn by_three(look: &Look, seen: &Seen, spacing: Millimetres) -> Option<Result<Found, NotFound>> {
    let mut best: Option<Found> = None;
    for three in threes(seen) {
        let Some((pixel, view)) = three.fourth(look, spacing) else { continue };
        let lines = Lines::of(look, &view, spacing);
        if !lines.prove_near(three.missing.point(spacing)) {
            continue;
        }
        let known = |corner: Corner| three.marks.iter().find(|(known, _)| *known == corner);
        let of = |(_, one): &(Corner, &Candidate)| Pixel::new(one.middle.x, one.middle.y);
        let pixels = Corner::ALL.map(|corner| known(corner).map_or(pixel, of));
        let told = Some(three.missing);
        let grid = Grid::of(&lines, Pitch::of(look, &view, spacing), spacing);
        let Some(unlike) = three.unlike(&view) else { continue };
        let found = Found { pixels, view, told, grid, unlike };
        if best.is_some_and(|other| !is_same(&other, &found)) {
            return Some(Err(NotFound::Several));
        }
        best = Some(found);
    }
    best.map(Ok)
}

/// Whether two sets have their marks in the same places.
fn is_same(one: &Found, other: &Found) -> bool {
    let apart =
        |(one, other): (&Pixel, &Pixel)| (one.x_px - other.x_px).hypot(one.y_px - other.y_px);
    one.pixels.iter().zip(&other.pixels).map(apart).all(|px| px < 10.0)
}
