//! Fisher's F distribution.

use statrs::function::beta::beta_reg;

use super::error::{DistributionError, degrees_of_freedom};
use super::inversion::root;
use crate::Level;

/// The ratio of two independent chi-squared variables, each over its own degrees of freedom ν₁ and ν₂.
///
/// # Formula
/// P(F > f) = I(ν₂/(ν₂ + ν₁ f); ν₂/2, ν₁/2), I the regularised incomplete beta function.
///
/// # Source
/// M. Abramowitz, I. A. Stegun, 1964, Handbook of Mathematical Functions, 26.6.2 (from memory); `beta_reg` of `statrs`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FisherF {
    above: f64,
    below: f64,
}

impl FisherF {
    /// The most degrees of freedom that are taken, above and below.
    pub const LARGEST: f64 = 1e4;

    /// The distribution with `above` degrees of freedom in the numerator and `below` in the denominator, which need
    /// not be whole.
    ///
    /// # Errors
    /// [`DistributionError`] unless both lie above 0 and at most at [`LARGEST`](Self::LARGEST).
    pub fn new(above: f64, below: f64) -> Result<Self, DistributionError> {
        let checked = |value| degrees_of_freedom(value, Self::LARGEST);
        Ok(Self { above: checked(above)?, below: checked(below)? })
    }

    /// P(F > f), keeping its digits where it is small: 1 below 0, NaN for NaN.
    pub fn upper_tail(self, f: f64) -> f64 {
        if f <= 0.0 {
            return 1.0;
        }
        if f == f64::INFINITY || f.is_nan() {
            return if f.is_nan() { f } else { 0.0 };
        }
        let Self { above, below } = self;
        beta_reg(0.5 * below, 0.5 * above, below / (below + above * f))
    }
    /// The f at which P(F ≤ f) is `level`.
    pub fn quantile(self, level: Level) -> f64 {
        let beyond = 1.0 - level.probability();
        let f = |x: f64| x / (1.0 - x);
        // Halving over x = f/(1 + f).
        f(root(|x| beyond - self.upper_tail(f(x)), |_| 0.0, 0.5, 0.0, 1.0))
    }
}
