//! The chi-squared distribution.

use statrs::function::gamma::{gamma_lr, gamma_ur};

use super::error::{DistributionError, degrees_of_freedom};
use super::inversion::root;
use super::normal;
use crate::Level;

/// The sum of ν squared standard normal variables.
///
/// # Formula
/// P(X ≤ x) = P(ν/2, x/2), the regularised lower incomplete gamma function.
///
/// # Source
/// `gamma_lr` and `gamma_ur` of `statrs`; quantiles start from E. B. Wilson, M. M. Hilferty, 1931, The distribution of
/// chi-square, PNAS 17, and are solved to the last digits.
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

    /// P(X ≤ x): 0 below 0, NaN for NaN.
    pub fn cdf(self, x: f64) -> f64 {
        if x <= 0.0 {
            0.0
        } else if x == f64::INFINITY {
            1.0
        } else {
            gamma_lr(0.5 * self.degrees_of_freedom, 0.5 * x)
        }
    }

    /// P(X > x), keeping its digits where it is small.
    pub fn upper_tail(self, x: f64) -> f64 {
        if x <= 0.0 {
            1.0
        } else if x == f64::INFINITY {
            0.0
        } else {
            gamma_ur(0.5 * self.degrees_of_freedom, 0.5 * x)
        }
    }

    /// The x at which P(X ≤ x) is `level`.
    pub fn quantile(self, level: Level) -> f64 {
        let (nu, p) = (self.degrees_of_freedom, level.probability());
        let spread = 2.0 / (9.0 * nu);
        let cube_root = 1.0 - spread + normal::quantile(level) * spread.sqrt();
        // Far in the lower tail P(X ≤ x) ≈ (x/2)^(ν/2) / Γ(ν/2 + 1).
        let far = 2.0 * ((p.ln() + libm::lgamma(0.5 * nu + 1.0)) / (0.5 * nu)).exp();
        let start = if cube_root > 0.1 { nu * cube_root.powi(3) } else { far };
        // The smaller tail keeps its digits; 1 − p is exact above one half.
        let excess = |x: f64| {
            if p < 0.5 { self.cdf(x) - p } else { (1.0 - p) - self.upper_tail(x) }
        };
        root(excess, |x| self.density(x), start, 0.0, 2.0 * nu + 2000.0)
    }

    fn density(self, x: f64) -> f64 {
        let half = 0.5 * self.degrees_of_freedom;
        0.5 * ((half - 1.0) * (0.5 * x).ln() - 0.5 * x - libm::lgamma(half)).exp()
    }
}
