//! The regularised incomplete gamma functions.

use super::mass::poisson;
use super::tails::Tails;

/// More terms than 10⁷ degrees of freedom ever need (about 7√a).
const MOST_TERMS: usize = 100_000;

/// P(a, x) below and Q(a, x) above, for 0 < a and 0 ≤ x, to 1e-13 of themselves where a is below 10⁵ (1e-11 below 10⁷).
///
/// # Formula
/// P(a, x) = xᵃe^(−x)/Γ(a + 1) · (1 + x/(a + 1) + x²/((a + 1)(a + 2)) + …) for x < a + 1; otherwise
/// Q(a, x) = xᵃe^(−x)/Γ(a) · 1/(x + 1 − a − 1·(1 − a)/(x + 3 − a − 2·(2 − a)/(x + 5 − a − …))).
///
/// # Source
/// M. Abramowitz, I. A. Stegun, 1964, Handbook of Mathematical Functions, 6.5.29 and 6.5.31, the fraction in its even
/// form and by W. J. Lentz, 1976, Applied Optics 15, 668 (from memory).
pub(super) fn incomplete_gamma(a: f64, x: f64) -> Tails {
    if x.is_nan() {
        Tails::UNKNOWN
    } else if x <= 0.0 {
        Tails::ABOVE
    } else if x == f64::INFINITY {
        Tails::BELOW
    } else if x < a + 1.0 {
        Tails::of_lower((poisson(a, x) * lower_over_mass(a, x)).clamp(0.0, 1.0))
    } else {
        Tails::of_upper((poisson(a, x) * upper_over_mass(a, x)).clamp(0.0, 1.0))
    }
}

/// P(a, x) in units of xᵃe^(−x)/Γ(a + 1); quick where x is not far above a.
pub(super) fn lower_over_mass(a: f64, x: f64) -> f64 {
    let (mut term, mut sum, mut shape) = (1.0, 1.0, a);
    for _ in 0..MOST_TERMS {
        shape += 1.0;
        term *= x / shape;
        sum += term;
        if term < 0.1 * f64::EPSILON * sum {
            break;
        }
    }
    sum
}

/// Q(a, x) in units of xᵃe^(−x)/Γ(a + 1); for x above a.
pub(super) fn upper_over_mass(a: f64, x: f64) -> f64 {
    let mut b = x + 1.0 - a;
    let (mut c, mut d) = (f64::INFINITY, 1.0 / b);
    let mut fraction = d;
    for i in 1..MOST_TERMS {
        let numerator = -(i as f64) * (i as f64 - a);
        b += 2.0;
        d = 1.0 / nonzero(numerator * d + b);
        c = nonzero(b + numerator / c);
        fraction *= c * d;
        if (c * d - 1.0).abs() < 2.0 * f64::EPSILON {
            break;
        }
    }
    a * fraction
}

/// Lentz's guard against a division by exactly nothing.
fn nonzero(value: f64) -> f64 {
    if value == 0.0 { f64::MIN_POSITIVE } else { value }
}
