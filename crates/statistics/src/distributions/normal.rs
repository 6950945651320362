//! The standard normal distribution.

use std::f64::consts::FRAC_1_SQRT_2;

/// P(Z ≤ z) for a standard normal Z.
///
/// # Formula
/// Φ(z) = ½ erfc(−z/√2).
///
/// # Source
/// `erfc` of the FreeBSD mathematical library (rational approximations of W. J. Cody's kind, error below one
/// unit in the last place), through the `libm` crate. Relative accuracy better than 1e-13, lower tail included.
pub fn cdf(z: f64) -> f64 {
    0.5 * libm::erfc(-z * FRAC_1_SQRT_2)
}

/// P(lower ≤ Z ≤ upper), without losing digits where both bounds lie in the same tail.
pub fn between(lower: f64, upper: f64) -> f64 {
    if lower + upper > 0.0 { cdf(-lower) - cdf(-upper) } else { cdf(upper) - cdf(lower) }
}
