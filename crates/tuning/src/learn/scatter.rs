//! The archer's scatter, his aim and the lean frame, from the residuals.

use super::residuals::{Residuals, Sum};
use crate::Scales;
use crate::observation::{Kind, Observations};
use crate::readings::ShotWeight;

/// The expected scatter weighs as much as so many coordinates.
const SCATTER_PRIOR: f64 = 2.0;

/// The expected drift from end to end weighs as much as so many coordinates.
const END_PRIOR: f64 = 6.0;

/// Moves the scatter of shots and ends to where the residuals put it; bare and fletched, x and y keep their ratio.
pub fn update(
    scales: &mut Scales,
    expected: &Scales,
    seen: &Observations,
    residuals: &Residuals,
    weights: &[ShotWeight],
) {
    let (mut hits, mut leans) = (Sum::default(), Sum::default());
    for (at, shot) in seen.shots.iter().enumerate() {
        let bare = seen.kind_of(shot) == Kind::Bare;
        let (hit_mm, lean_deg) = if bare {
            (expected.bare_mm, expected.bare_lean_deg)
        } else {
            (expected.reference_mm, expected.reference_lean_deg)
        };
        hits.add(residuals.hit[at] * weights[at].hit / (hit_mm * hit_mm));
        if let Some(lean) = residuals.lean[at] {
            leans.add(lean * weights[at].lean / (lean_deg * lean_deg));
        }
    }
    let wider = root_mean(hits, SCATTER_PRIOR, 1.0);
    scales.bare_mm = expected.bare_mm * wider;
    scales.reference_mm = expected.reference_mm * wider;
    let wider = root_mean(leans, SCATTER_PRIOR, 1.0);
    scales.bare_lean_deg = expected.bare_lean_deg * wider;
    scales.reference_lean_deg = expected.reference_lean_deg * wider;
    scales.aim_mm = root_mean(residuals.aim, END_PRIOR, expected.aim_mm);
    scales.frame_deg = root_mean(residuals.frame, END_PRIOR, expected.frame_deg);
}

/// The root of the mean square, with `prior` terms at what was expected.
pub fn root_mean(sum: Sum, prior: f64, expected: f64) -> f64 {
    ((sum.squares + prior * expected * expected) / (sum.terms + prior)).sqrt()
}

impl Sum {
    /// Adds the squares of two coordinates.
    fn add(&mut self, squares: f64) {
        self.squares += squares;
        self.terms += 2.0;
    }
}
