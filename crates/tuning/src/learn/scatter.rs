//! The archer's scatter, his aim and the lean frame, from the residuals.

use super::residuals::{Residuals, Sum};
use crate::Scales;
use crate::observation::{Kind, Observations};
use crate::readings::ShotWeight;

/// The expected scatter weighs as much as so many coordinates.
const SCATTER_PRIOR: f64 = 2.0;

/// The expected drift from end to end weighs as much as so many coordinates.
const END_PRIOR: f64 = 6.0;

/// That the archer is as wide in both axes weighs as much as so many shots.
const ROUND_PRIOR: f64 = 24.0;

/// Moves the scatter of shots and ends to where the residuals put it; bare and fletched keep their ratio, the leans of x
/// and y are alike.
pub fn update(
    scales: &mut Scales,
    expected: &Scales,
    seen: &Observations,
    residuals: &Residuals,
    weights: &[ShotWeight],
) {
    let mut hits = [Sum::default(); 2];
    let mut leans = Sum::default();
    for (at, shot) in seen.shots.iter().enumerate() {
        let bare = seen.kind_of(shot) == Kind::Bare;
        let (hit_mm, lean_deg) = if bare {
            (expected.bare_mm, expected.bare_lean_deg)
        } else {
            (expected.reference_mm, expected.reference_lean_deg)
        };
        for (sum, square) in hits.iter_mut().zip(residuals.hit[at]) {
            sum.add(square * weights[at].hit / (hit_mm * hit_mm), 1.0);
        }
        if let Some(lean) = residuals.lean[at] {
            leans.add(lean * weights[at].lean / (lean_deg * lean_deg), 2.0);
        }
    }
    scales.taller = taller(hits, scales.bare_mm / expected.bare_mm);
    let [x, y] = hits;
    let both =
        Sum { squares: scales.rounded_mm2([x.squares, y.squares]), terms: x.terms + y.terms };
    let wider = root_mean(both, SCATTER_PRIOR, 1.0);
    scales.bare_mm = expected.bare_mm * wider;
    scales.reference_mm = expected.reference_mm * wider;
    let wider = root_mean(leans, SCATTER_PRIOR, 1.0);
    scales.bare_lean_deg = expected.bare_lean_deg * wider;
    scales.reference_lean_deg = expected.reference_lean_deg * wider;
    for axis in [0, 1] {
        scales.aim_mm[axis] = root_mean(residuals.aim[axis], END_PRIOR, expected.aim_mm[axis]);
    }
    scales.frame_deg = root_mean(residuals.frame, END_PRIOR, expected.frame_deg);
}

/// How many times wider up and down than to the sides, where both were expected to be `wider` times the unit of the sums.
fn taller([x, y]: [Sum; 2], wider: f64) -> f64 {
    root_mean(y, ROUND_PRIOR, wider) / root_mean(x, ROUND_PRIOR, wider)
}

/// The root of the mean square, with `prior` terms at what was expected.
pub fn root_mean(sum: Sum, prior: f64, expected: f64) -> f64 {
    ((sum.squares + prior * expected * expected) / (sum.terms + prior)).sqrt()
}

impl Sum {
    /// Adds squares of so many coordinates.
    fn add(&mut self, squares: f64, terms: f64) {
        self.squares += squares;
        self.terms += terms;
    }
}
