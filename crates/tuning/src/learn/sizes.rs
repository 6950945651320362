//! How large the parts of the shafts are, from the unknowns themselves.

use super::build::Build;
use super::residuals::Sum;
use super::scatter::root_mean;
use crate::Scales;
use crate::layout::shaft;
use crate::observation::{Kind, Observations};
use crate::posterior::Posterior;

/// The expected size of a shaft's part weighs as much as so many coordinates.
const SIZE_PRIOR: f64 = 6.0;

/// Moves the sizes of the parts to where the unknowns put them; those of a badly built shaft weigh less.
pub fn update(
    scales: &mut Scales,
    expected: &Scales,
    seen: &Observations,
    posterior: &Posterior,
    builds: &[Build],
) {
    let over_shafts = |parts: &[usize], weight: &dyn Fn(usize) -> f64| {
        let mut sum = Sum::default();
        for (life, place) in seen.lives.iter().enumerate() {
            if place.kind == Kind::Bare {
                let own = posterior.layout.life(life);
                for part in parts {
                    sum.squares += weight(life) * posterior.expected_square(own + part);
                    sum.terms += 2.0;
                }
            }
        }
        sum
    };
    let size = |part, expected| {
        root_mean(over_shafts(&[part], &|life| builds[life].miss), SIZE_PRIOR, expected)
    };
    scales.centre_mm = size(shaft::CENTRE, expected.centre_mm);
    scales.turning_mm = size(shaft::TURNING, expected.turning_mm);
    scales.stiff_mm = size(shaft::STIFF, expected.stiff_mm);
    let leans = [shaft::CENTRE_LEAN, shaft::TURNING_LEAN, shaft::STIFF_LEAN];
    scales.discrepancy_deg = root_mean(
        over_shafts(&leans, &|life| builds[life].lean),
        SIZE_PRIOR,
        expected.discrepancy_deg,
    );
}
