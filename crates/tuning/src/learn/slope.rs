//! The lean that goes with a miss, learned as the slope of a regression between two unknowns.

use super::end_mean::EndMean;
use crate::Scales;
use crate::design;
use crate::observation::{Kind, Observations};
use crate::posterior::Posterior;
use crate::readings::{Coordinate, Of};

/// How far the slope may lie from what was expected, as a share of it.
const SLOPE_SD_SHARE: f64 = 0.25;

/// Moves the slope to where the leans put it.
///
/// # Formula
/// With r the residual of a lean and t the miss that it goes with, both expected over the posterior,
/// s ← s + (Σ w E[r t] + (s₀ − s)/v₀) / (Σ w E[t²] + 1/v₀).
pub fn update(
    scales: &mut Scales,
    expected: &Scales,
    before: &Scales,
    seen: &Observations,
    coordinates: &[Coordinate],
    posterior: &Posterior,
) {
    let held = (SLOPE_SD_SHARE * expected.lean_per_miss_deg_per_mm).powi(-2);
    let slope = before.lean_per_miss_deg_per_mm;
    let mut across = held * (expected.lean_per_miss_deg_per_mm - slope);
    let mut along = held;
    for (at, coordinate) in coordinates.iter().enumerate().filter(|(_, one)| one.of == Of::Lean) {
        let end = EndMean::of(coordinate, posterior);
        for reading in &coordinate.readings {
            let shot = &seen.shots[reading.shot];
            if seen.kind_of(shot) == Kind::Reference {
                continue;
            }
            let miss =
                &design::bare_hit(&posterior.layout, shot.life, shot.bow, shot.mark_rad)[at % 2];
            let mean = posterior.mean_of(miss);
            across += reading.weight * end.expected_residual_product(reading, miss, posterior);
            along += reading.weight * (mean * mean + posterior.variance_of(miss));
        }
    }
    scales.lean_per_miss_deg_per_mm = slope + across / along;
}
