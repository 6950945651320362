//! A bow that is farther off than the flight model expects of any.

use nalgebra::Vector2;

use crate::Scales;
use crate::observation::{Kind, Observation, Observations};

/// Where bare shots land farther off than so many standard deviations of what is expected, the expectation is wrong.
const FAR: f64 = 3.0;

/// Fewer shots may all have flown far.
const FEWEST: usize = 3;

/// Lets the common offset be as far off as the bare shots are, where that is far beyond what is expected of a bow.
///
/// Without this, tails and prior together would take every bare shot of such a bow for one that flew far. The middle of
/// the shots with each state of the bow is their median on each axis, from the references of the sitting.
pub fn reach_far(seen: &mut Observations, scales: &mut Scales) {
    let middles: Vec<_> = (0..=seen.bow_changes_mm.len()).map(|bow| middle(seen, bow)).collect();
    let mut before = Some(Vector2::zeros());
    let mut common_mm = scales.far_off().common_mm;
    let expected_mm = std::iter::once(&mut common_mm).chain(&mut seen.bow_changes_mm);
    for (expected_mm, middle) in expected_mm.zip(middles) {
        let gone_mm = before.zip(middle).map_or(0.0, |(before, middle)| (middle - before).norm());
        if gone_mm > FAR * *expected_mm {
            *expected_mm = gone_mm;
        }
        before = middle.or(before);
    }
    scales.common_mm *= common_mm / scales.far_off().common_mm;
}

/// Where bare shafts land with a state of the bow, from the references; nothing where too few were shot.
fn middle(seen: &Observations, bow: usize) -> Option<Vector2<f64>> {
    let bare = of_kind(seen, Kind::Bare).filter(|shot| shot.bow == bow);
    let misses = bare.filter_map(|shot| Some(shot.hit_mm - reference(seen, shot.sitting)?));
    let misses: Vec<Vector2<f64>> = misses.collect();
    let axis = |at: usize| median(misses.iter().map(|miss| miss[at]).collect());
    (misses.len() >= FEWEST).then(|| Vector2::new(axis(0), axis(1)))
}

/// Where the references of a sitting landed, on average.
fn reference(seen: &Observations, sitting: usize) -> Option<Vector2<f64>> {
    let hits: Vec<_> = of_kind(seen, Kind::Reference)
        .filter(|shot| shot.sitting == sitting)
        .map(|shot| shot.hit_mm)
        .collect();
    (!hits.is_empty()).then(|| hits.iter().sum::<Vector2<f64>>() / hits.len() as f64)
}

fn of_kind(seen: &Observations, kind: Kind) -> impl Iterator<Item = &Observation> {
    seen.shots.iter().filter(move |shot| seen.kind_of(shot) == kind)
}

/// The middle of several numbers, 0 of none.
fn median(mut of: Vec<f64>) -> f64 {
    of.sort_by(f64::total_cmp);
    of.get(of.len() / 2).copied().unwrap_or_default()
}
