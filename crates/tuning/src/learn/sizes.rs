//! How large the parts of the shafts are, from the unknowns themselves.

use super::residuals::Sum;
use super::scatter::root_mean;
use crate::Scales;
use crate::layout::shaft;
use crate::observation::{Kind, Observations};
use crate::posterior::Posterior;

/// The expected size of a shaft's part weighs as much as so many coordinates.
const SIZE_PRIOR: f64 = 6.0;

/// Moves the sizes of the parts to where the unknowns put them.
pub fn update(scales: &mut Scales, expected: &Scales, seen: &Observations, posterior: &Posterior) {
    let over_shafts = |parts: &[usize]| {
        let mut sum = Sum::default();
        for (life, place) in seen.lives.iter().enumerate() {
            if place.kind == Kind::Bare {
                let own = posterior.layout.life(life);
                for part in parts {
                    sum.add_unknown(posterior, own + part);
                }
            }
        }
        sum
    };
    scales.centre_mm = root_mean(over_shafts(&[shaft::CENTRE]), SIZE_PRIOR, expected.centre_mm);
    scales.turning_mm = root_mean(over_shafts(&[shaft::TURNING]), SIZE_PRIOR, expected.turning_mm);
    scales.stiff_mm = root_mean(over_shafts(&[shaft::STIFF]), SIZE_PRIOR, expected.stiff_mm);
    let leans = [shaft::CENTRE_LEAN, shaft::TURNING_LEAN, shaft::STIFF_LEAN];
    scales.discrepancy_deg = root_mean(over_shafts(&leans), SIZE_PRIOR, expected.discrepancy_deg);
}

impl Sum {
    /// Adds the expected squares of the planar unknown at `at`.
    fn add_unknown(&mut self, posterior: &Posterior, at: usize) {
        for place in at..at + 2 {
            self.squares += posterior.mean[place].powi(2) + posterior.covariance[(place, place)];
            self.terms += 1.0;
        }
    }
}
