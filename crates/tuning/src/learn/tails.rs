//! Shots that fly far weigh less, and so do those of a shaft that does not repeat.

use super::looseness::Looseness;
use super::residuals::Residuals;
use crate::Scales;
use crate::observation::{Kind, Observation, Observations};
use crate::readings::ShotWeight;

/// Degrees of freedom ν of the tails of single shots: about one shot in twenty flies far.
const TAIL: f64 = 6.0;

/// How much each shot counts.
pub fn weights(
    seen: &Observations,
    residuals: &Residuals,
    scales: &Scales,
    looseness: &[Looseness],
) -> Vec<ShotWeight> {
    let weigh = |(at, shot): (usize, &Observation)| {
        let bare = seen.kind_of(shot) == Kind::Bare;
        let (hit_mm, lean_deg) = if bare {
            (scales.bare_mm, scales.bare_lean_deg)
        } else {
            (scales.reference_mm, scales.reference_lean_deg)
        };
        let hit = scales.rounded_mm2(residuals.hit[at]) / (hit_mm * hit_mm);
        let lean = residuals.lean[at].map_or(0.0, |lean| lean / (lean_deg * lean_deg));
        let over_widths = looseness[shot.life].widths().map(|(wider, probability)| {
            let squared = wider * wider;
            probability * weight(hit / squared) / squared
        });
        ShotWeight { hit: over_widths.sum(), lean: weight(lean) }
    };
    seen.shots.iter().enumerate().map(weigh).collect()
}

/// The precision of a planar deviation as a multiple of the usual, from its square in units of the scale: (ν + 2) / (ν + d²).
pub fn weight(square: f64) -> f64 {
    (TAIL + 2.0) / (TAIL + square)
}

/// ln of the planar t density, but for a constant and for the determinant of its scale: −½ (ν + 2) ln(1 + d²/ν).
pub fn log_density(square: f64) -> f64 {
    -f64::midpoint(TAIL, 2.0) * (square / TAIL).ln_1p()
}
