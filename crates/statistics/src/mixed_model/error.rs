//! Why a mixed model cannot be fitted.

use thiserror::Error;

use crate::distributions::DistributionError;
use crate::{MixedModel, SampleError};

/// Why a mixed model cannot be fitted.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum MixedError {
    /// A column of the design or the response is shorter or longer than the others.
    #[error("{rows} rows of fixed covariates, but {found} of {what}; each row needs one")]
    CountsDiffer {
        /// Rows of fixed covariates.
        rows: usize,
        /// What does not match.
        what: &'static str,
        /// How many of it there are.
        found: usize,
    },
    /// A covariate that cannot be computed with; observations are counted down the columns.
    #[error("{what}: {error}")]
    Covariate {
        /// Which covariates.
        what: &'static str,
        /// What is wrong with it.
        error: SampleError,
    },
    /// As many fixed effects as rows, or none.
    #[error(
        "{rows} rows for {effects} fixed effects; take at least one effect and more rows than effects"
    )]
    TooFewRows {
        /// Number of rows.
        rows: usize,
        /// Number of fixed effects.
        effects: usize,
    },
    /// A fixed covariate that the earlier ones already give.
    #[error("fixed covariate {} follows from the ones before it; leave it out", column + 1)]
    Collinear {
        /// Its column, counted from 0.
        column: usize,
    },
    /// A random covariate without effect.
    #[error("random covariate {} is zero in every row; leave it out", column + 1)]
    Absent {
        /// Its column, counted from 0.
        column: usize,
    },
    /// The levels are meant to be the small factor.
    #[error(
        "{levels} levels with {coefficients} coefficients each; at most {} coefficients in all can be kept, \
         so make the larger factor the blocks",
        MixedModel::MOST_COEFFICIENTS
    )]
    TooManyLevels {
        /// Number of levels.
        levels: usize,
        /// Number of coefficients of each.
        coefficients: usize,
    },
    /// The fixed effects leave nothing to explain, or blocks and levels explain all of it.
    #[error(
        "the model fits the response exactly; without scatter there is no variance to estimate"
    )]
    NoScatter,
    /// Two variances that only their sum can be told of, such as blocks of one row and the residual.
    #[error(
        "the design cannot tell the variances apart; group more rows together or leave a random covariate out"
    )]
    Confounded,
    /// The optimum was not reached.
    #[error(
        "no optimum after {steps} steps; take more rows for as many coefficients, or check the response for values \
         of another size"
    )]
    NotConverged {
        /// Steps taken.
        steps: usize,
    },
    /// Degrees of freedom beyond what can be computed with.
    #[error(transparent)]
    Distribution(#[from] DistributionError),
}
