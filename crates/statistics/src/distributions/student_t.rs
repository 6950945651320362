//! Student's t distribution.

use super::error::{DistributionError, degrees_of_freedom};
use super::fisher_f::FisherF;
use super::normal;
use super::tails::Tails;
use crate::Level;

/// A standard normal variable over the root of an independent chi-squared one divided by its ν degrees of freedom.
///
/// # Formula
/// P(T > t) = ½ P(F > t²) for t ≥ 0, F Fisher's with 1 and ν degrees of freedom.
///
/// # Source
/// M. Abramowitz, I. A. Stegun, 1964, Handbook of Mathematical Functions, 26.7.1 (from memory); from a million degrees
/// of freedom on G. W. Hill, 1970, Algorithms 395 and 396: Student's t-distribution and its quantiles, Communications
/// of the ACM 13 (from memory).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StudentT {
    degrees_of_freedom: f64,
}

/// From here on the distribution is so close to the normal one that one term in 1/ν² is enough.
const MANY: f64 = 1e6;

impl StudentT {
    /// The most degrees of freedom that are taken.
    pub const LARGEST: f64 = 1e12;

    /// The distribution with these `degrees_of_freedom`, which need not be whole.
    ///
    /// # Errors
    /// [`DistributionError`] unless they lie above 0 and at most at [`LARGEST`](Self::LARGEST).
    pub fn new(degrees_of_freedom: f64) -> Result<Self, DistributionError> {
        let degrees_of_freedom = self::degrees_of_freedom(degrees_of_freedom, Self::LARGEST)?;
        Ok(Self { degrees_of_freedom })
    }

    /// P(T ≤ t), keeping its digits where it is small; NaN for NaN.
    pub fn cdf(self, t: f64) -> f64 {
        self.upper_tail(-t)
    }

    /// P(T > t), keeping its digits where it is small; NaN for NaN.
    pub fn upper_tail(self, t: f64) -> f64 {
        let nu = self.degrees_of_freedom;
        if nu >= MANY {
            return normal::cdf(-normalised(t, nu));
        }
        let square = FisherF { above: 1.0, below: nu };
        let tail = 0.5 * square.upper_tail(t * t);
        if t < 0.0 { 1.0 - tail } else { tail }
    }

    /// The t at which P(T ≤ t) is `level`.
    pub fn quantile(self, level: Level) -> f64 {
        let (nu, p) = (self.degrees_of_freedom, level.probability());
        if nu >= MANY {
            return widened(normal::quantile(level), nu);
        }
        let square = FisherF { above: 1.0, below: nu };
        let central = 2.0 * (p - 0.5).abs();
        let t = square.at(Tails { lower: central, upper: 2.0 * p.min(1.0 - p) }).sqrt();
        match p {
            0.5 => 0.0,
            _ if p < 0.5 => -t,
            _ => t,
        }
    }
}

/// The z that a standard normal variable exceeds as rarely as T exceeds `t`, for many degrees of freedom.
fn normalised(t: f64, nu: f64) -> f64 {
    let a = nu - 0.5;
    let w = t.signum() * (a * (t * t / nu).ln_1p()).sqrt();
    w + w * (w * w + 3.0) / (48.0 * a * a)
}

/// The t that T exceeds as rarely as a standard normal variable exceeds `z`, for many degrees of freedom.
fn widened(z: f64, nu: f64) -> f64 {
    let a = nu - 0.5;
    let w = z - z * (z * z + 3.0) / (48.0 * a * a);
    w.signum() * (nu * (w * w / a).exp_m1()).sqrt()
}
