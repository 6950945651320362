//! Fisher's F distribution.

use super::error::{DistributionError, degrees_of_freedom};
use super::incomplete_beta::incomplete_beta;
use super::inversion;
use super::mass::beta;
use super::tails::Tails;
use crate::Level;

/// The ratio of two independent chi-squared variables, each over its own degrees of freedom ν₁ and ν₂.
///
/// # Formula
/// P(F ≤ f) = I(ν₁f/(ν₂ + ν₁f); ν₁/2, ν₂/2), I the regularised incomplete beta function.
///
/// # Source
/// M. Abramowitz, I. A. Stegun, 1964, Handbook of Mathematical Functions, 26.6.2 (from memory).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FisherF {
    pub(super) above: f64,
    pub(super) below: f64,
}

impl FisherF {
    /// The most degrees of freedom that are taken, above and below.
    pub const LARGEST: f64 = 1e7;

    /// The distribution with `above` degrees of freedom in the numerator and `below` in the denominator, which need
    /// not be whole.
    ///
    /// # Errors
    /// [`DistributionError`] unless both lie above 0 and at most at [`LARGEST`](Self::LARGEST).
    pub fn new(above: f64, below: f64) -> Result<Self, DistributionError> {
        let checked = |value| degrees_of_freedom(value, Self::LARGEST);
        Ok(Self { above: checked(above)?, below: checked(below)? })
    }

    /// P(F ≤ f), keeping its digits where it is small: 0 below 0, NaN for NaN.
    pub fn cdf(self, f: f64) -> f64 {
        self.tails(f).lower
    }

    /// P(F > f), keeping its digits where it is small: 1 below 0, NaN for NaN.
    pub fn upper_tail(self, f: f64) -> f64 {
        self.tails(f).upper
    }

    /// The f at which P(F ≤ f) is `level`.
    pub fn quantile(self, level: Level) -> f64 {
        self.at(Tails::of_lower(level.probability()))
    }

    /// The f that has these tails.
    pub(super) fn at(self, wanted: Tails) -> f64 {
        let [a, b] = [0.5 * self.above, 0.5 * self.below];
        let mass = |f: f64| {
            let (x, y) = self.shares(f);
            beta(a, b, x, y)
        };
        inversion::quantile(wanted, |f| self.tails(f), mass, 1.0)
    }

    fn tails(self, f: f64) -> Tails {
        let (x, y) = self.shares(f);
        incomplete_beta(0.5 * self.above, 0.5 * self.below, x, y)
    }

    /// ν₁f/(ν₂ + ν₁f) and ν₂/(ν₂ + ν₁f).
    fn shares(self, f: f64) -> (f64, f64) {
        let ratio = self.above / self.below * if f < 0.0 { 0.0 } else { f };
        (1.0 / (1.0 + 1.0 / ratio), 1.0 / (1.0 + ratio))
    }
}
