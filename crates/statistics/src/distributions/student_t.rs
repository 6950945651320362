//! Student's t distribution.

use std::f64::consts::TAU;

use statrs::function::beta::beta_reg;

use super::error::{DistributionError, degrees_of_freedom};
use super::gamma_ratio::root_mean_shortfall;
use super::inversion::root;
use super::normal;
use crate::Level;

/// A standard normal variable over the root of an independent chi-squared one divided by its ν degrees of freedom.
///
/// # Formula
/// P(T > t) = ½ I(ν/(ν + t²); ν/2, ½) for t ≥ 0, I the regularised incomplete beta function.
///
/// # Source
/// `beta_reg` of `statrs`, and from 1,000 degrees of freedom on G. W. Hill, 1970, Algorithm 395: Student's t-distribution,
/// Communications of the ACM 13 (from memory). Quantiles start from the first terms of the expansion in 1/ν (M.
/// Abramowitz, I. A. Stegun, 1964, Handbook of Mathematical Functions, 26.7.5, from memory) and are solved to the last digits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StudentT {
    degrees_of_freedom: f64,
}

/// From here on the distribution is so close to the normal one that an expansion beats the continued fraction.
const MANY: f64 = 1000.0;

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

    /// P(T ≤ t); NaN for NaN.
    pub fn cdf(self, t: f64) -> f64 {
        self.upper_tail(-t)
    }

    /// P(T > t), keeping its digits where it is small; NaN for NaN.
    pub fn upper_tail(self, t: f64) -> f64 {
        if t.is_nan() {
            return t;
        }
        let nu = self.degrees_of_freedom;
        let tail = if nu < MANY {
            0.5 * beta_reg(0.5 * nu, 0.5, nu / (nu + t * t))
        } else {
            normal::cdf(-normalised(t, nu))
        };
        if t >= 0.0 { tail } else { 1.0 - tail }
    }

    /// The t at which P(T ≤ t) is `level`.
    pub fn quantile(self, level: Level) -> f64 {
        let (nu, p) = (self.degrees_of_freedom, level.probability());
        let z = normal::quantile(level).abs();
        let start = z + z * (z * z + 1.0) / (4.0 * nu);
        // The smaller tail keeps its digits; 1 − p is exact above one half.
        let tail = p.min(1.0 - p);
        let t = root(|t| tail - self.upper_tail(t), |t| self.density(t), start, 0.0, f64::MAX);
        if p < 0.5 { -t } else { t }
    }

    /// c(ν)/√(2π) · (1 + t²/ν)^(−(ν + 1)/2).
    fn density(self, t: f64) -> f64 {
        let nu = self.degrees_of_freedom;
        root_mean_shortfall(nu) / TAU.sqrt() * (-0.5 * (nu + 1.0) * (t * t / nu).ln_1p()).exp()
    }
}

/// The z that a standard normal variable exceeds as rarely as T exceeds `t`, for many degrees of freedom.
fn normalised(t: f64, nu: f64) -> f64 {
    let a = nu - 0.5;
    let b = 48.0 * a * a;
    let w = (a * (t * t / nu).ln_1p()).sqrt();
    let w2 = w * w;
    let second = w * (855.0 + w2 * (240.0 + w2 * (33.0 + 4.0 * w2)));
    w + w * (w2 + 3.0) / b - second / (10.0 * b * (b + 0.8 * w2 * w2 + 100.0))
}
