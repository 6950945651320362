//! Which grid is printed between the marks, and in what size: a proof of the spacing that owes nothing to the size of the marks.

use quarterturn_geometry::{Homography, Millimetres, Point};

use crate::look::Look;

/// A grid as it is drawn: how far apart its fine lines are, and which of them are bold.
#[derive(Clone, Copy)]
struct Grid {
    fine_mm: f64,
    bold_every: u32,
}

/// Centimetres and half inches.
const GRIDS: [Grid; 2] =
    [Grid { fine_mm: 10.0, bold_every: 5 }, Grid { fine_mm: 12.7, bold_every: 4 }];
/// A print comes out so much larger or smaller, or a tape was read so wrong, at most: as much as is allowed for the marks.
const SIZES: std::ops::RangeInclusive<f64> = 0.87..=1.13;
/// Pitches are tried in such steps: at the eighth line less than a step of the profile.
const PITCH_STEP_MM: f64 = 0.02;

/// The marks and what stands around them are not looked at; nor is what is farther out than this.
const MARKS_MM: f64 = 7.0;
const FARTHEST_MM: f64 = 120.0;
/// Across the lines the light is looked at in steps, and along them as well.
const ACROSS_MM: f64 = 0.25;
const ALONG_MM: f64 = 2.0;
/// What is beside a place, to either side, in steps across.
const BESIDE: usize = 12;
/// Darker than this beside its surroundings is no fine line but a shaft, a shadow or a number.
const MOST_DARK: f64 = 0.08;

/// A line is seen where it is darker than the profile's own noise by so many standard deviations.
const SEEN: f64 = 2.5;
/// So many lines must be looked at, and so many of ten seen.
const LEAST_LINES: usize = 8;
const LEAST_IN_TEN: usize = 7;

/// A grid as it is seen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Pitch {
    /// Its size, where marks stand as far apart as was said; 1 where the face was drawn so.
    pub size: f64,
    /// How far apart its bold lines run then, mm.
    pub bold_mm: f64,
}

impl Pitch {
    /// The grid between marks that stand `spacing` apart; `None` where too little is seen of it.
    ///
    /// # Formula
    /// The light is averaged along the lines, which leaves a profile across them; of all pitches that one is taken whose lines
    /// are darkest in both profiles, if at least seven in ten of them are seen one by one; it is then that of least squares through
    /// their places. Where its size can be that of either grid, the bold lines tell which it is.
    pub fn of(look: &Look, view: &Homography, spacing: Millimetres) -> Option<Self> {
        let out_mm = (spacing.mm() / 2.0 - MARKS_MM).min(FARTHEST_MM);
        let profiles = [Along::X, Along::Y].map(|along| Profile::of(look, view, along, out_mm));
        let [Some(one), Some(other)] = profiles else { return None };
        let profiles = [one, other];
        let [least_mm, most_mm] =
            [GRIDS[0].fine_mm * SIZES.start(), GRIDS[1].fine_mm * SIZES.end()];
        let tried = (0_u32..).map(|n| least_mm + PITCH_STEP_MM * f64::from(n));
        let combs = tried.take_while(|mm| *mm <= most_mm).map(|mm| Comb::of(&profiles, mm));
        let comb = combs.max_by(|one, other| one.dark.total_cmp(&other.dark))?;
        if comb.lines < LEAST_LINES || comb.seen * 10 < comb.lines * LEAST_IN_TEN {
            return None;
        }
        let pitch_mm = comb.pitch_mm;
        let bold = |grid: &Grid| bold(&profiles, pitch_mm, grid.bold_every);
        let grids = GRIDS.iter().filter(|grid| SIZES.contains(&(pitch_mm / grid.fine_mm)));
        let grid = grids.max_by(|one, other| bold(one).total_cmp(&bold(other)))?;
        let bold_mm = pitch_mm * f64::from(grid.bold_every);
        Some(Self { size: pitch_mm / grid.fine_mm, bold_mm })
    }
}

/// Which way a profile runs.
#[derive(Clone, Copy)]
enum Along {
    X,
    Y,
}

/// How much darker than its surroundings the face is, across lines that run the other way.
struct Profile {
    /// From one side to the other, in standard deviations of its noise.
    dark: Vec<f64>,
    out_mm: f64,
}

impl Profile {
    fn of(look: &Look, view: &Homography, along: Along, out_mm: f64) -> Option<Self> {
        let across: Vec<f64> = steps(out_mm, ACROSS_MM);
        let mut dark = vec![0.0; across.len()];
        for on_mm in steps(out_mm, ALONG_MM) {
            let light = |&at_mm: &f64| {
                let place = match along {
                    Along::X => Point::new(at_mm, on_mm),
                    Along::Y => Point::new(on_mm, at_mm),
                };
                look.at(view.pixel_of(place)?)
            };
            let row: Vec<f64> = across.iter().map(light).collect::<Option<_>>()?;
            for (sum, part) in dark.iter_mut().zip(beside(&row)) {
                *sum += part;
            }
        }
        let noise = median(dark.iter().map(|value| value.abs()).collect())?;
        (noise > 0.0)
            .then(|| Self { dark: dark.iter().map(|value| value / noise).collect(), out_mm })
    }

    /// The darkest place within `reach` steps of one, and how dark it is.
    fn darkest(&self, at_mm: f64, reach: usize) -> Option<(f64, f64)> {
        let middle = index((at_mm + self.out_mm) / ACROSS_MM)?;
        let near = middle.checked_sub(reach)?..=middle + reach;
        let near = near.map(|at| Some((at, *self.dark.get(at)?))).collect::<Option<Vec<_>>>()?;
        let (at, dark) = near.into_iter().max_by(|one, other| one.1.total_cmp(&other.1))?;
        Some((at as f64 * ACROSS_MM - self.out_mm, dark))
    }
}

/// How well lines at every multiple of a pitch are seen.
struct Comb {
    /// How dark they are in the mean, none counted for more than a clear line.
    dark: f64,
    lines: usize,
    /// How many of them are seen one by one.
    seen: usize,
    /// The pitch by those that are seen.
    pitch_mm: f64,
}

impl Comb {
    fn of(profiles: &[Profile; 2], pitch_mm: f64) -> Self {
        let (mut dark, mut lines, mut seen) = (0.0, 0, 0);
        let (mut products, mut squares) = (0.0, 0.0);
        for (n, at_mm, value) in teeth(profiles, pitch_mm) {
            lines += 1;
            dark += value.min(2.0 * SEEN);
            if value >= SEEN {
                seen += 1;
                products += f64::from(n) * at_mm;
                squares += f64::from(n * n);
            }
        }
        let pitch_mm = if squares > 0.0 { products / squares } else { pitch_mm };
        Self { dark: dark / lines.max(1) as f64, lines, seen, pitch_mm }
    }
}

/// Every multiple of a pitch but 0, which line that is, the darkest place at it and how dark that is.
fn teeth(profiles: &[Profile; 2], pitch_mm: f64) -> impl Iterator<Item = (i32, f64, f64)> {
    profiles.iter().flat_map(move |profile| {
        let places = (1..).take_while(move |n| f64::from(*n) * pitch_mm <= profile.out_mm);
        places.flat_map(|n| [n, -n]).filter_map(move |n| {
            let (at_mm, dark) = profile.darkest(f64::from(n) * pitch_mm, 1)?;
            Some((n, at_mm, dark))
        })
    })
}

/// How much darker every line of so many is than the others between.
fn bold(profiles: &[Profile; 2], pitch_mm: f64, every: u32) -> f64 {
    let mean = |is_bold: bool| {
        let teeth = teeth(profiles, pitch_mm);
        let of_kind = teeth.filter(|(n, ..)| n.unsigned_abs().is_multiple_of(every) == is_bold);
        let (count, sum) =
            of_kind.fold((0.0, 0.0), |(count, sum), (.., dark)| (count + 1.0, sum + dark));
        if count > 0.0 { sum / count } else { 0.0 }
    };
    mean(true) - mean(false)
}

/// From −`out_mm` to `out_mm`.
fn steps(out_mm: f64, step_mm: f64) -> Vec<f64> {
    let at = |n: u32| f64::from(n) * step_mm - out_mm;
    (0..2000).map(at).take_while(|at_mm| *at_mm <= out_mm).collect()
}

/// How much darker each place of a row is than the mean about it, as a share.
fn beside(row: &[f64]) -> Vec<f64> {
    let mut sums = vec![0.0];
    for value in row {
        sums.push(sums[sums.len() - 1] + value);
    }
    let dark = |(at, value): (usize, &f64)| {
        let (from, to) = (at.saturating_sub(BESIDE), (at + BESIDE + 1).min(row.len()));
        let mean = (sums[to] - sums[from]) / (to - from) as f64;
        ((mean - value) / mean.max(1.0)).clamp(-MOST_DARK, MOST_DARK)
    };
    row.iter().enumerate().map(dark).collect()
}

fn median(mut values: Vec<f64>) -> Option<f64> {
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied()
}

#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "it is not negative")]
fn index(steps: f64) -> Option<usize> {
    (steps >= 0.0).then(|| steps.round() as usize)
}
