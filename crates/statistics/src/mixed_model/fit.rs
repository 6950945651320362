//! What a mixed model says of one response.

use crate::Estimate;

/// Fixed effects and variances of one response, fitted by restricted maximum likelihood.
#[derive(Clone, Debug, PartialEq)]
pub struct MixedFit {
    /// The fixed effects in the order of their covariates; n counts rows.
    pub fixed: Vec<Estimate>,
    /// Variance of the blocks' own values; n counts blocks.
    pub block_variance: Estimate,
    /// Variance of each coefficient between levels, in the order of the random covariates; n counts levels.
    pub coefficient_variances: Vec<Estimate>,
    /// Variance of what is left; n counts rows.
    pub residual_variance: Estimate,
    /// ln L, restricted: that of n − p contrasts free of the fixed effects, without the
    /// constant ½ ln det `XᵀX`, as is usual.
    pub log_likelihood: f64,
}

impl MixedFit {
    /// How many variances are exactly zero, the least they can be.
    pub fn at_boundary(&self) -> usize {
        let variances = self.coefficient_variances.iter().chain([&self.block_variance]);
        variances.filter(|variance| variance.value <= 0.0).count()
    }
}
