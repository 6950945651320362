//! How much the leans of shafts differ from the relation, from the unknowns themselves.

use super::build::Build;
use super::residuals::Sum;
use super::scatter::root_mean;
use crate::Scales;
use crate::layout::shaft;
use crate::observation::{Kind, Observations};
use crate::posterior::Posterior;

/// The expected difference weighs as much as so many coordinates.
const DISCREPANCY_PRIOR: f64 = 6.0;

/// Moves the difference to where the unknowns put it; those of a shaft that leans otherwise weigh less.
pub fn update(
    scales: &mut Scales,
    expected: &Scales,
    seen: &Observations,
    posterior: &Posterior,
    builds: &[Build],
) {
    let mut all = Sum::default();
    for part in [shaft::CENTRE_LEAN, shaft::TURNING_LEAN, shaft::STIFF_LEAN] {
        let of_part = over_shafts(seen, posterior, part, |life| builds[life].lean);
        all.squares += of_part.squares;
        all.terms += of_part.terms;
    }
    scales.discrepancy_deg = root_mean(all, DISCREPANCY_PRIOR, expected.discrepancy_deg);
}

/// The expected squares of a part over all bare shafts, each with its weight.
pub fn over_shafts(
    seen: &Observations,
    posterior: &Posterior,
    part: usize,
    weight: impl Fn(usize) -> f64,
) -> Sum {
    let mut sum = Sum::default();
    for (life, place) in seen.lives.iter().enumerate() {
        if place.kind == Kind::Bare {
            let at = posterior.layout.life(life) + part;
            sum.squares += weight(life) * posterior.expected_square(at);
            sum.terms += 2.0;
        }
    }
    sum
}
