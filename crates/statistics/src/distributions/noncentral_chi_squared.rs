//! The noncentral chi-squared distribution.

use std::iter::successors;

use statrs::function::gamma::gamma_lr;

use super::error::{DistributionError, degrees_of_freedom};

/// The sum of ν squared normal variables of variance 1 whose squared means sum to the noncentrality λ.
///
/// With ν = 2 it is the squared distance from the origin of a round normal cloud centred √λ away.
///
/// # Formula
/// P(X ≤ x) = Σⱼ wⱼ P(ν/2 + j, x/2), wⱼ = e^(−λ/2) (λ/2)ʲ/j!, P the regularised lower incomplete gamma function.
///
/// # Source
/// The mixture: R. A. Fisher, 1928, The general sampling distribution of the multiple correlation coefficient (from
/// memory). Summed outwards from the largest weight, as in D. Benton, K. Krishnamoorthy, 2003, Computing discrete mixtures of
/// continuous distributions, Computational Statistics & Data Analysis 43 (from memory).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NoncentralChiSquared {
    degrees_of_freedom: f64,
    noncentrality: f64,
}

/// Weights below this share of the largest are left out; what they sum to stays below 1e-13.
const NEGLIGIBLE: f64 = 1e-17;

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

    /// P(X ≤ x) to 1e-11: 0 below 0, NaN for NaN.
    ///
    /// Terms follow from their neighbours. Weights are taken in units of the largest and divided by their sum, which leaves
    /// them no rounding of their own; where they are negligible the sum stops, after at most some 9√λ + 40 terms.
    pub fn cdf(self, x: f64) -> f64 {
        if x <= 0.0 {
            return 0.0;
        }
        if x == f64::INFINITY {
            return 1.0;
        }
        let (half, y) = (0.5 * self.noncentrality, 0.5 * x);
        let mode = Term::at_mode(0.5 * self.degrees_of_freedom, half, y);
        let up = successors(Some(mode), |term| Some(term.next(half, y)));
        let down = successors(Some(mode), |term| term.previous(half, y)).skip(1);
        let counts = |term: &Term| term.weight > NEGLIGIBLE;
        let terms = up.take_while(counts).chain(down.take_while(counts));
        let (weights, sum) =
            terms.fold((0.0, 0.0), |(w, s), t| (w + t.weight, s + t.weight * t.probability));
        sum / weights
    }
}

/// One term of the mixture.
#[derive(Clone, Copy)]
struct Term {
    /// j.
    index: f64,
    /// wⱼ in units of the largest weight.
    weight: f64,
    /// a = ν/2 + j.
    shape: f64,
    /// P(a, y).
    probability: f64,
    /// yᵃ e^(−y)/Γ(a + 1) = P(a, y) − P(a + 1, y).
    gap: f64,
}

impl Term {
    fn at_mode(half_freedom: f64, half: f64, y: f64) -> Self {
        let index = half.floor();
        let shape = half_freedom + index;
        let gap = (shape * y.ln() - y - libm::lgamma(shape + 1.0)).exp();
        Self { index, weight: 1.0, shape, probability: gamma_lr(shape, y), gap }
    }

    fn next(self, half: f64, y: f64) -> Self {
        let (index, shape) = (self.index + 1.0, self.shape + 1.0);
        Self {
            index,
            weight: self.weight * half / index,
            shape,
            probability: (self.probability - self.gap).max(0.0),
            gap: self.gap * y / shape,
        }
    }

    fn previous(self, half: f64, y: f64) -> Option<Self> {
        let gap = self.gap * self.shape / y;
        (self.index > 0.0).then_some(Self {
            index: self.index - 1.0,
            weight: self.weight * self.index / half,
            shape: self.shape - 1.0,
            probability: self.probability + gap,
            gap,
        })
    }
}
