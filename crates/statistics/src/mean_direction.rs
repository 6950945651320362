//! Directions: their mean and how well they agree.

use std::f64::consts::TAU;

use crate::Sample;

/// Where a sample of directions points, and how well it agrees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeanDirection {
    /// The mean direction in [0, 2π), turning as the angles do; `None` where the directions cancel.
    pub direction_rad: Option<f64>,
    /// Length of the mean unit vector: 0 where the directions cancel, 1 where all are the same.
    pub resultant_length: f64,
    /// Number of directions.
    pub n: usize,
}

impl MeanDirection {
    /// The mean direction of angles in radians, whole turns of no matter.
    ///
    /// # Formula
    /// R̄ e^(iθ̄) = Σ e^(iθⱼ)/n. Below 1e-12 R̄ is rounding, and there is no direction.
    ///
    /// # Source
    /// K. V. Mardia, P. E. Jupp, 2000, Directional Statistics, section 2.2 (from memory).
    pub fn of(angles_rad: &Sample) -> Self {
        let n = angles_rad.n();
        let sum = |part: fn(f64) -> f64| angles_rad.values().iter().copied().map(part).sum::<f64>();
        let (cos, sin) = (sum(f64::cos) / n as f64, sum(f64::sin) / n as f64);
        let resultant_length = cos.hypot(sin).min(1.0);
        // The remainder of a tiny negative angle rounds up to a whole turn.
        let direction = Some(sin.atan2(cos).rem_euclid(TAU)).map(|a| if a < TAU { a } else { 0.0 });
        Self { direction_rad: direction.filter(|_| resultant_length > 1e-12), resultant_length, n }
    }
}
