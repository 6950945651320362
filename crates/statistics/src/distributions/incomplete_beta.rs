//! The regularised incomplete beta function.

use super::mass::beta;
use super::tails::Tails;

/// More terms than the parameters taken ever need (about 7√(a + b)).
const MOST_TERMS: usize = 100_000;

/// I(x; a, b) below and I(y; b, a) above, for 0 < a, 0 < b, x + y = 1. Both x and y are asked for, as one of them may be too
/// close to 1 to tell the other.
///
/// # Formula
/// I(x; a, b) = xᵃyᵇ/B(a, b) · 1/(β₀ + α₁/(β₁ + α₂/(β₂ + …))), taken for whichever of the two sides has x below its mean,
/// αₘ = (a + m − 1)(a + b + m − 1) m (b − m) x²/(a + 2m − 1)²,
/// βₘ = m + m (b − m) x/(a + 2m − 1) + (a + m)(a − (a + b)x + 1 + m (1 + y))/(a + 2m + 1).
///
/// # Source
/// A. R. Di Donato, A. H. Morris, 1992, Significant digit computation of the incomplete beta function ratios, ACM
/// Transactions on Mathematical Software 18, 360, section 5 (from memory).
pub(super) fn incomplete_beta(a: f64, b: f64, x: f64, y: f64) -> Tails {
    if x.is_nan() {
        Tails::UNKNOWN
    } else if x <= 0.0 {
        Tails::ABOVE
    } else if y <= 0.0 {
        Tails::BELOW
    } else if b * x <= a * y {
        Tails::of_lower((beta(a, b, x, y) * fraction(a, b, x, y)).clamp(0.0, 1.0))
    } else {
        Tails::of_upper((beta(a, b, x, y) * fraction(b, a, y, x)).clamp(0.0, 1.0))
    }
}

fn fraction(a: f64, b: f64, x: f64, y: f64) -> f64 {
    // a − (a + b)x without its cancellation.
    let below_mean = a * y - b * x;
    let denominator = |m: f64| {
        m + m * (b - m) * x / (a + 2.0 * m - 1.0)
            + (a + m) * (below_mean + 1.0 + m * (1.0 + y)) / (a + 2.0 * m + 1.0)
    };
    // β₀, whose second term is none: at a = 1 it would be 0/0.
    let first = a * (below_mean + 1.0) / (a + 1.0);
    let (mut c, mut d) = (f64::INFINITY, 1.0 / first);
    let mut fraction = d;
    for term in 1..MOST_TERMS {
        let m = term as f64;
        let share = x / (a + 2.0 * m - 1.0);
        let numerator = (a + m - 1.0) * share * (a + b + m - 1.0) * share * m * (b - m);
        d = 1.0 / (denominator(m) + numerator * d);
        c = denominator(m) + numerator / c;
        fraction *= c * d;
        if (c * d - 1.0).abs() < 2.0 * f64::EPSILON {
            break;
        }
    }
    fraction
}
