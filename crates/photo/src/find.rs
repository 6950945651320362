//! Looks for the four marks of the face.

use quarterturn_geometry::{Millimetres, Pixel};

use crate::candidate::{Candidate, candidates};
use crate::fourth::Three;
use crate::ink::{ink, ink_midway};
use crate::lines::Lines;
use crate::look::Look;
use crate::regions::regions;
use crate::set::{Judged, Set};
use crate::{Corner, Dot, Found, Luminance, NotFound};

/// Pictures are looked at smaller first, where blur and noise are small as well: pixels along the longer side.
const LOOKS: [usize; 3] = [1200, 2400, 4800];
/// How far the look round a pixel reaches, as parts of the longer side: marks are from one to five hundredths of it wide.
const REACHES: [usize; 2] = [20, 60];
/// More of one kind than this is no face.
const MOST_OF_A_KIND: usize = 12;
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
    let mut seen: Vec<Candidate> = Vec::new();
    let mut looks: Vec<Look> = Vec::new();
    let mut factors: Vec<usize> = LOOKS.iter().map(|look| longer.div_ceil(*look)).collect();
    factors.dedup();
    for by in factors {
        let Some(smaller) = picture.shrunk(by) else { continue };
        let look = Look { picture: smaller, by };
        for reach in REACHES {
            add(&look, longer / by / reach, &mut seen);
            match chosen(&look, &seen, spacing) {
                Err(NotFound::TooFew { .. } | NotFound::NoSet { .. }) => {}
                settled => return settled,
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

/// Adds the marks that can be seen in a picture made smaller to those that are known; what is seen later is seen better.
fn add(look: &Look, reach: usize, seen: &mut Vec<Candidate>) {
    let Look { picture, by } = look;
    let (ink, width) = (ink(picture, reach.max(1)), picture.width());
    let regions = regions(&ink, width);
    let rough = candidates(&regions, &ink, width);
    for one in rough.iter().filter_map(|rough| again(picture, rough)) {
        let one = one.enlarged(*by);
        seen.retain(|other| (other.middle - one.middle).norm() > one.radius() / 2.0);
        seen.push(one);
    }
}

/// A mark measured anew where it is known: its ink and paper are parted midway between the two.
fn again(picture: &Luminance, rough: &Candidate) -> Option<Candidate> {
    let radius = rough.radius();
    let out = radius * (Dot::MARK.mm() + 2.5) / Dot::WHITE.mm();
    let [left, top] = [rough.middle.x, rough.middle.y].map(|middle| whole(middle - out));
    let across = whole(2.0 * out) + 1;
    let part = picture.part(left..left + across, top..top + across)?;
    let ink = ink_midway(&part, whole(radius).max(2));
    let seen = candidates(&regions(&ink, part.width()), &ink, part.width());
    let here = seen.into_iter().find(|one| {
        let off = one.moved(left, top).middle - rough.middle;
        off.norm() < radius / 2.0 && one.dot().is_some() && one.is_on_paper(&ink, part.width())
    });
    here.map(|one| one.moved(left, top))
}

/// Whole pixels.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "it is not negative")]
fn whole(pixels: f64) -> usize {
    pixels.max(0.0) as usize
}

/// The one set that fits.
fn chosen(look: &Look, seen: &[Candidate], spacing: Millimetres) -> Result<Found, NotFound> {
    let of = |dot: Dot| -> Vec<&Candidate> {
        seen.iter().filter(|one| one.dot() == Some(dot)).take(MOST_OF_A_KIND).collect()
    };
    let [large, medium, small] = [Dot::Large, Dot::Medium, Dot::Small].map(of);
    debug_assert!(
        Corner::ALL.map(Corner::dot) == [Dot::Large, Dot::Small, Dot::Medium, Dot::Medium]
    );
    if large.is_empty() || small.is_empty() || medium.len() < 2 {
        return Err(NotFound::TooFew { seen: seen.len() });
    }
    let (mut found, mut outcome) = (None, NotFound::NoSet { seen: seen.len() });
    for set in sets(&large, &medium, &small) {
        match set.judged(spacing) {
            Judged::No => {}
            Judged::Mirrored => outcome = NotFound::Mirrored,
            Judged::Fits { view, size, unlike } if SIZES.contains(&size) => {
                let lines = Lines::of(look, &view, spacing);
                if lines.disprove() {
                    outcome = NotFound::Lines { said: spacing };
                    continue;
                }
                if found.is_some() {
                    return Err(NotFound::Several);
                }
                let lines = lines.error().filter(|_| lines.prove());
                let pixels = set.pixels();
                found = Some(Found { pixels, view: *view, told: None, lines, unlike });
            }
            Judged::Fits { size, .. } => {
                outcome = NotFound::Spacing { said: spacing, looks: spacing * size.recip() };
            }
        }
    }
    found.ok_or(outcome)
}

/// The set of three marks and what is left of a fourth, where the lines of the grid prove it and prove no other.
fn by_three(
    look: &Look,
    seen: &[Candidate],
    spacing: Millimetres,
) -> Option<Result<Found, NotFound>> {
    let mut best: Option<Found> = None;
    for three in threes(seen) {
        let Some((pixel, view)) = three.fourth(look, spacing) else { continue };
        let lines = Lines::of(look, &view, spacing);
        if !lines.prove() {
            continue;
        }
        let known = |corner: Corner| three.marks.iter().find(|(known, _)| *known == corner);
        let of = |(_, one): &(Corner, &Candidate)| Pixel::new(one.middle.x, one.middle.y);
        let pixels = Corner::ALL.map(|corner| known(corner).map_or(pixel, of));
        let (told, lines) = (Some(three.missing), lines.error());
        let Some(unlike) = three.unlike(&view) else { continue };
        let found = Found { pixels, view, told, lines, unlike };
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

/// All ways to take a mark for each of three corners.
fn threes(seen: &[Candidate]) -> impl Iterator<Item = Three<'_>> {
    let of = |corner: Corner| {
        let has_dot = move |one: &&Candidate| one.dot() == Some(corner.dot());
        seen.iter().filter(has_dot).take(MOST_OF_A_KIND)
    };
    Corner::ALL.into_iter().flat_map(move |missing| {
        let mut rest = Corner::ALL.into_iter().filter(move |corner| *corner != missing);
        let rest: [Corner; 3] = std::array::from_fn(|_| rest.next().unwrap_or(missing));
        of(rest[0]).flat_map(move |one| {
            of(rest[1]).filter(move |other| *other != one).flat_map(move |other| {
                let last = of(rest[2]).filter(move |last| *last != one && *last != other);
                last.map(move |last| Three {
                    marks: [(rest[0], one), (rest[1], other), (rest[2], last)],
                    missing,
                })
            })
        })
    })
}

/// All ways to take a mark for each corner.
fn sets<'a>(
    large: &'a [&'a Candidate],
    medium: &'a [&'a Candidate],
    small: &'a [&'a Candidate],
) -> impl Iterator<Item = Set<'a>> {
    let of_two = move |(top_left, top_right): (&'a Candidate, &'a Candidate)| {
        medium.iter().flat_map(move |&bottom_right| {
            let others = medium.iter().filter(move |&&other| other != bottom_right);
            others.map(move |&bottom_left| Set([top_left, top_right, bottom_right, bottom_left]))
        })
    };
    let tops = large.iter().flat_map(move |&one| small.iter().map(move |&other| (one, other)));
    tops.flat_map(of_two)
}
