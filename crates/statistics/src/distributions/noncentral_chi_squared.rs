//! The noncentral chi-squared distribution.

use super::chi_squared::ChiSquared;
use super::error::{DistributionError, degrees_of_freedom};
use super::incomplete_gamma::{incomplete_gamma, lower_over_mass, upper_over_mass};
use super::inversion;
use super::mass::poisson;
use super::tails::Tails;
use crate::Level;

/// The sum of ν squared normal variables of variance 1 whose squared means sum to the noncentrality λ.
///
/// With ν = 2 it is the squared distance from the origin of a round normal cloud centred √λ away.
///
/// # Formula
/// P(X ≤ x) = Σⱼ wⱼ P(ν/2 + j, x/2), wⱼ = e^(−λ/2) (λ/2)ʲ/j!, P the regularised lower incomplete gamma function; its
/// upper tail is the same sum of Q = 1 − P.
///
/// # Source
/// The mixture: R. A. Fisher, 1928, The general sampling distribution of the multiple correlation coefficient. That
/// terms follow from their neighbours: D. Benton, K. Krishnamoorthy, 2003, Computing discrete mixtures of continuous
/// distributions, Computational Statistics & Data Analysis 43 (both from memory). P is followed downwards and Q
/// upwards, so that nothing but sums are taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoncentralChiSquared {
    degrees_of_freedom: f64,
    noncentrality: f64,
}

/// Terms below this share of the sum are left out; what they sum to stays below 1e-13 of it.
const NEGLIGIBLE: f64 = 1e-17;

/// Nothing is left above, whatever the parameters: two hundred standard deviations from the largest mean.
const FARTHEST: f64 = 10.0 * NoncentralChiSquared::LARGEST;

impl NoncentralChiSquared {
    /// The most degrees of freedom, and the largest noncentrality, that are taken.
    pub const LARGEST: f64 = 1e4;

    /// The distribution with these `degrees_of_freedom`, which need not be whole, and this `noncentrality`.
    ///
    /// # Errors
    /// [`DistributionError`] unless 0 < `degrees_of_freedom` and 0 ≤ `noncentrality`, both at most
    /// [`LARGEST`](Self::LARGEST).
    pub fn new(degrees_of_freedom: f64, noncentrality: f64) -> Result<Self, DistributionError> {
        let degrees_of_freedom = self::degrees_of_freedom(degrees_of_freedom, Self::LARGEST)?;
        if (0.0..=Self::LARGEST).contains(&noncentrality) {
            Ok(Self { degrees_of_freedom, noncentrality })
        } else {
            let (value, largest) = (noncentrality, Self::LARGEST);
            Err(DistributionError::Noncentrality { value, largest })
        }
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
    ///
    /// # Source
    /// Starts from a central one of the same two moments: P. B. Patnaik, 1949, Biometrika 36, 202 (from memory).
    pub fn quantile(self, level: Level) -> f64 {
        let (nu, lambda) = (self.degrees_of_freedom, self.noncentrality);
        let scale = (nu + 2.0 * lambda) / (nu + lambda);
        let start = ChiSquared::new((nu + lambda) / scale)
            .map_or(nu, |central| scale * central.quantile(level));
        let wanted = Tails::of_lower(level.probability());
        let mass = |x: f64| self.downwards(0.5 * x, |_, mass| mass);
        inversion::quantile(wanted, |x| self.tails(x), mass, start)
    }

    fn tails(self, x: f64) -> Tails {
        let (half, y) = (0.5 * self.noncentrality, 0.5 * x);
        if half == 0.0 || x <= 0.0 || x == f64::INFINITY || x.is_nan() {
            return incomplete_gamma(0.5 * self.degrees_of_freedom, y);
        }
        if x > FARTHEST {
            Tails::BELOW
        } else if x < self.degrees_of_freedom + self.noncentrality {
            Tails::of_lower(self.downwards(y, |tail, _| tail).clamp(0.0, 1.0))
        } else {
            Tails::of_upper(self.upwards(y).clamp(0.0, 1.0))
        }
    }

    /// Σ wⱼ f(P(a + j, y), its mass), from the last term that counts down; f need not be more than P itself.
    ///
    /// P and its change are kept times their weight and in units of the first change, so that none vanishes before all
    /// of them do.
    fn downwards(self, y: f64, f: impl Fn(f64, f64) -> f64) -> f64 {
        let half = 0.5 * self.noncentrality;
        let largest = self.largest_term(y);
        let mut index = self.last_that_counts(largest, y, 1.0);
        let mut shape = 0.5 * self.degrees_of_freedom + index;
        let unit = poisson(index, half) * poisson(shape, y);
        let (mut change, mut tail) = (1.0, lower_over_mass(shape, y));
        let mut sum = f(tail, shape);
        while index > 0.0 {
            let weight = index / half;
            change *= weight * shape / y;
            tail = weight * tail + change;
            (index, shape) = (index - 1.0, shape - 1.0);
            let term = f(tail, change * shape);
            sum += term;
            if index < largest && term < NEGLIGIBLE * sum {
                break;
            }
        }
        unit * sum
    }

    /// Σ wⱼ Q(a + j, y), from the first term that counts up.
    fn upwards(self, y: f64) -> f64 {
        let half = 0.5 * self.noncentrality;
        let largest = self.largest_term(y);
        let mut index = self.last_that_counts(largest, y, -1.0);
        let mut shape = 0.5 * self.degrees_of_freedom + index;
        let unit = poisson(index, half) * poisson(shape, y);
        let (mut change, mut tail) = (1.0, upper_over_mass(shape, y));
        let mut sum = tail;
        while index <= largest || tail >= NEGLIGIBLE * sum {
            (index, shape) = (index + 1.0, shape + 1.0);
            let weight = half / index;
            tail = weight * (tail + change);
            change *= weight * y / shape;
            sum += tail;
        }
        unit * sum
    }

    /// The whole j at which wⱼ yᵃ⁺ʲe^(−y)/Γ(a + j + 1) is largest, where j (a + j) ≤ λy/2.
    fn largest_term(self, y: f64) -> f64 {
        let a = 0.5 * self.degrees_of_freedom;
        let product = 0.5 * self.noncentrality * y;
        (2.0 * product / (a + (a * a + 4.0 * product).sqrt())).floor()
    }

    /// The last j on one side of the largest, in steps of 1 or −1, whose term counts; 0 at the least.
    fn last_that_counts(self, largest: f64, y: f64, step: f64) -> f64 {
        let a = 0.5 * self.degrees_of_freedom;
        let product = 0.5 * self.noncentrality * y;
        let (mut index, mut share) = (largest, 1.0);
        while index + step >= 0.0 {
            let higher = index.max(index + step);
            share *= (product / (higher * (a + higher))).powf(step);
            if share < NEGLIGIBLE {
                break;
            }
            index += step;
        }
        index
    }
}
