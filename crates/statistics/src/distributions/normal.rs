//! The standard normal distribution.

use std::f64::consts::{FRAC_1_SQRT_2, SQRT_2, TAU};

use crate::Level;

/// P(Z ≤ z) for a standard normal Z; NaN for NaN.
///
/// # Formula
/// Φ(z) = ½ erfc(−z/√2).
///
/// # Source
/// `erfc` of the FreeBSD mathematical library, through the `libm` crate; relative accuracy 1e-13, lower tail included.
pub fn cdf(z: f64) -> f64 {
    0.5 * libm::erfc(-z * FRAC_1_SQRT_2)
}

/// P(lower ≤ Z ≤ upper), without losing digits where both bounds lie in the same tail.
pub fn between(lower: f64, upper: f64) -> f64 {
    if lower + upper > 0.0 { cdf(-lower) - cdf(-upper) } else { cdf(upper) - cdf(lower) }
}

/// The z at which P(Z ≤ z) is `level`.
///
/// # Source
/// z = −√2 erfc⁻¹(2p) by `statrs`, polished by one Newton step on [`cdf`]; relative accuracy 1e-13.
pub fn quantile(level: Level) -> f64 {
    // The smaller tail keeps its digits; 1 − p is exact above one half.
    let p = level.probability();
    if p > 0.5 { -lower_quantile(1.0 - p) } else { lower_quantile(p) }
}

fn lower_quantile(p: f64) -> f64 {
    let z = -SQRT_2 * statrs::function::erf::erfc_inv(2.0 * p);
    let density = (-0.5 * z * z).exp() / TAU.sqrt();
    z - (cdf(z) - p) / density
}
