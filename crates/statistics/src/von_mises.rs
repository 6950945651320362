//! How concentrated directions are about their mean.

use crate::distributions::ChiSquared;
use crate::{Estimate, Interval, Level, MeanDirection};

impl MeanDirection {
    /// The concentration κ of von Mises' distribution with its interval at `level`; `None` for fewer than three
    /// directions, or where all are the same. 1/√κ is about the standard deviation, in radians, where κ is large; at 0
    /// every direction is as likely.
    ///
    /// # Formula
    /// The most likely κ has I₁(κ)/I₀(κ) = R̄; standard error 1/√(n (1 − R̄/κ − R̄²)), at 0 √(2/n). The interval is where
    /// 2γ (n − R) lies between the quantiles of χ² with n − 1 degrees of freedom, R = nR̄ and 1/γ = 1/κ + 3/(8κ²).
    ///
    /// # Assumptions
    /// Independent von Mises directions. The most likely κ of few directions is too large, by n/(n − 3) where κ is
    /// large; the interval is not, and it covers as often as stated where κ is 2 or more.
    ///
    /// # Source
    /// K. V. Mardia, P. E. Jupp, 2000, Directional Statistics, sections 5.3.1 and 7.2; γ: M. A. Stephens, 1969, Tests
    /// for the von Mises distribution, Biometrika 56, 149 (both from memory).
    pub fn concentration(&self, level: Level) -> Option<Estimate> {
        let left = self.n as f64 * (1.0 - self.resultant_length);
        if self.n < 3 || left <= 0.0 {
            return None;
        }
        let value = concentration_of(self.resultant_length);
        let slope = bessel_ratio_and_slope(value).1;
        let chi_squared = ChiSquared::new((self.n - 1) as f64).ok()?;
        let bound = |end: Level| {
            let gamma = chi_squared.quantile(end) / (2.0 * left);
            0.5 * gamma * (1.0 + (1.0 + 1.5 / gamma).sqrt())
        };
        let (lower, upper) = (bound(level.lower_end()), bound(level.upper_end()));
        Some(Estimate {
            value,
            standard_error: (self.n as f64 * slope).recip().sqrt(),
            interval: Interval { lower, upper, level: level.probability() },
            n: self.n,
        })
    }
}

/// The κ with I₁(κ)/I₀(κ) = `resultant_length` below 1, by Newton's steps from N. I. Fisher's start, 1993, Statistical
/// Analysis of Circular Data, 4.5.5 (from memory).
fn concentration_of(resultant_length: f64) -> f64 {
    let r = resultant_length;
    let mut kappa = if r < 0.53 {
        2.0 * r + r.powi(3)
    } else if r < 0.85 {
        -0.4 + 1.39 * r + 0.43 / (1.0 - r)
    } else {
        1.0 / (r * (1.0 - r) * (3.0 - r))
    };
    for _ in 0..20 {
        let (ratio, slope) = bessel_ratio_and_slope(kappa);
        let step = (ratio - r) / slope;
        kappa -= step;
        if step.abs() <= 1e-14 * kappa {
            break;
        }
    }
    kappa.max(0.0)
}

/// A(κ) = I₁(κ)/I₀(κ) and its slope 1 − A/κ − A².
///
/// The ratio is the continued fraction 1/(2/κ + 1/(4/κ + 1/(6/κ + …))) from its end, which is negligible some 40 terms
/// beyond κ; from κ = 1000 on its expansion 1 − 1/2κ − 1/8κ² − 1/8κ³ − 25/128κ⁴ − 13/32κ⁵ and its slope, as the
/// difference cancels.
fn bessel_ratio_and_slope(kappa: f64) -> (f64, f64) {
    if kappa > 1000.0 {
        let u = 1.0 / kappa;
        let ratio =
            1.0 - u * (0.5 + u * (0.125 + u * (0.125 + u * (25.0 / 128.0 + u * 13.0 / 32.0))));
        return (ratio, u * u * (0.5 + u * (0.25 + u * 0.375)));
    }
    let terms = (1..=1040).rev().map(f64::from);
    let ratio = terms.fold(0.0, |rest, k| 1.0 / (2.0 * k / kappa.max(1e-300) + rest));
    let slope = if kappa < 1e-4 { 0.5 } else { 1.0 - ratio / kappa - ratio * ratio };
    (ratio, slope)
}
