//! One-way analysis of variance.

use thiserror::Error;

use crate::distributions::{DistributionError, FisherF};
use crate::{Sample, TestResult};

/// What scatters between groups of numbers, and what within them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AnalysisOfVariance {
    /// Σ nᵢ(x̄ᵢ − x̄)².
    pub between: f64,
    /// ΣΣ (xᵢⱼ − x̄ᵢ)².
    pub within: f64,
    /// Groups less one.
    pub between_freedom: usize,
    /// Values less groups.
    pub within_freedom: usize,
}

impl AnalysisOfVariance {
    /// The analysis of `groups`.
    ///
    /// # Formula
    /// The sums above, the deviations of the groups' means taken from the first value, so that digits which all values
    /// share do not drown them.
    ///
    /// # Errors
    /// [`AnovaError`] for fewer than two groups, no group of two, or values that are the same within every group.
    ///
    /// # Source
    /// R. A. Fisher, 1925, Statistical Methods for Research Workers, chapter 7 (from memory).
    pub fn of(groups: &[Sample]) -> Result<Self, AnovaError> {
        let n: usize = groups.iter().map(Sample::n).sum();
        let k = groups.len();
        if k < 2 {
            return Err(AnovaError::TooFewGroups { groups: k });
        }
        if n == k {
            return Err(AnovaError::NoReplicates { groups: k });
        }
        let origin = groups[0].values()[0];
        let shifted = |group: &Sample| Sample::shifted(group, -origin);
        let groups: Vec<_> = groups.iter().map(shifted).collect();
        let size = |group: &Sample| group.n() as f64;
        let grand = groups.iter().map(|g| size(g) * g.mean()).sum::<f64>() / n as f64;
        let between = groups.iter().map(|g| size(g) * (g.mean() - grand).powi(2)).sum();
        let squares = |g: &Sample| g.variance().unwrap_or(0.0) * (size(g) - 1.0);
        let within: f64 = groups.iter().map(squares).sum();
        if within <= 0.0 {
            return Err(AnovaError::NoScatter);
        }
        Ok(Self { between, within, between_freedom: k - 1, within_freedom: n - k })
    }

    /// The standard deviation within groups.
    pub fn residual_deviation(&self) -> f64 {
        (self.within / self.within_freedom as f64).sqrt()
    }

    /// The test that all groups have one mean. The statistic is F.
    ///
    /// # Formula
    /// F = (between/(k − 1))/(within/(n − k)), Fisher's with k − 1 and n − k degrees of freedom.
    ///
    /// # Assumptions
    /// Independent normal values of one variance.
    ///
    /// # Errors
    /// [`AnovaError::Distribution`] for more than ten million values.
    pub fn test(&self) -> Result<TestResult, AnovaError> {
        let (above, below) = (self.between_freedom as f64, self.within_freedom as f64);
        let statistic = self.between / above / (self.within / below);
        let p_value = FisherF::new(above, below)?.upper_tail(statistic);
        let n = self.between_freedom + self.within_freedom + 1;
        Ok(TestResult { statistic, p_value, n })
    }
}

/// Why groups cannot be analysed.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum AnovaError {
    /// Nothing to compare.
    #[error("{groups} groups; a comparison needs at least 2")]
    TooFewGroups {
        /// How many there are.
        groups: usize,
    },
    /// One value in each group.
    #[error("{groups} groups of one value each; at least one group needs two to tell the scatter")]
    NoReplicates {
        /// How many there are.
        groups: usize,
    },
    /// All values of each group coincide.
    #[error("the values do not scatter within any group; some must differ")]
    NoScatter,
    /// More degrees of freedom than can be computed with.
    #[error(transparent)]
    Distribution(#[from] DistributionError),
}
