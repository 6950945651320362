//! The chi-squared distribution.

use super::error::{DistributionError, degrees_of_freedom};
use super::incomplete_gamma::incomplete_gamma;
use super::inversion;
use super::mass::poisson;
use super::normal;
use super::tails::Tails;
use crate::Level;

/// The sum of ν squared standard normal variables.
///
/// # Formula
/// P(X ≤ x) = P(ν/2, x/2), the regularised lower incomplete gamma function.
///
/// # Source
/// M. Abramowitz, I. A. Stegun, 1964, Handbook of Mathematical Functions, 26.4.19 (from memory); quantiles start from E. B.
/// Wilson, M. M. Hilferty, 1931, The distribution of chi-square, PNAS 17, and are solved to the last digits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChiSquared {
    degrees_of_freedom: f64,
}

impl ChiSquared {
    /// The most degrees of freedom that are taken.
    pub const LARGEST: f64 = 1e7;

    /// The distribution with these `degrees_of_freedom`, which need not be whole.
    ///
    /// # Errors
    /// [`DistributionError`] unless they lie above 0 and at most at [`LARGEST`](Self::LARGEST).
    pub fn new(degrees_of_freedom: f64) -> Result<Self, DistributionError> {
        let degrees_of_freedom = self::degrees_of_freedom(degrees_of_freedom, Self::LARGEST)?;
        Ok(Self { degrees_of_freedom })
    }

    /// P(X ≤ x), keeping its digits where it is small: 0 below 0, NaN for NaN.
    pub fn cdf(self, x: f64) -> f64 {
        self.tails(x).lower
    }

    /// P(X > x), keeping its digits where it is small: 1 below 0, NaN for NaN.
    pub fn upper_tail(self, x: f64) -> f64 {
        self.tails(x).upper
    }

    /// The x at which P(X ≤ x) is `level`.
    pub fn quantile(self, level: Level) -> f64 {
        let (nu, p) = (self.degrees_of_freedom, level.probability());
        let spread = 2.0 / (9.0 * nu);
        let cube_root = 1.0 - spread + normal::quantile(level) * spread.sqrt();
        // Far in the lower tail P(X ≤ x) ≈ (x/2)^(ν/2) / Γ(ν/2 + 1).
        let far = 2.0 * ((p.ln() + libm::lgamma(0.5 * nu + 1.0)) / (0.5 * nu)).exp();
        let start = if cube_root > 0.1 { nu * cube_root.powi(3) } else { far };
        let mass = |x: f64| 0.5 * nu * poisson(0.5 * nu, 0.5 * x);
        inversion::quantile(Tails::of_lower(p), |x| self.tails(x), mass, start)
    }

    fn tails(self, x: f64) -> Tails {
        incomplete_gamma(0.5 * self.degrees_of_freedom, 0.5 * x)
    }
}
