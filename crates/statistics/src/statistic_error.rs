//! Why a statistic cannot be told.

use thiserror::Error;

use crate::distributions::DistributionError;
use crate::{AnovaError, PValueError, SampleError, SpreadError};

/// Why a statistic, an interval or a test has no answer for these observations.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum StatisticError {
    /// Fewer observations than unknowns.
    #[error("{n} observations where at least {needed} are needed")]
    TooFew {
        /// How many there are.
        n: usize,
        /// How many it takes.
        needed: usize,
    },
    /// Fewer groups than can be compared.
    #[error("{groups} groups; a comparison needs at least 2")]
    TooFewGroups {
        /// How many there are.
        groups: usize,
    },
    /// Pairs that do not pair up.
    #[error("{first} observations beside {second}; each needs its partner")]
    CountsDiffer {
        /// How many there are on one side.
        first: usize,
        /// How many on the other.
        second: usize,
    },
    /// All observations are equal.
    #[error("the observations do not scatter; some must differ")]
    NoScatter,
    /// The points spread in one direction only.
    #[error("the points lie on one line; an area needs some beside it")]
    Collinear,
    /// No direction.
    #[error("a direction of no length; give the way along which to look")]
    NoDirection,
    /// What follows from the observations is too large to compute with.
    #[error(transparent)]
    Sample(#[from] SampleError),
    /// The spread cannot be told.
    #[error(transparent)]
    Spread(#[from] SpreadError),
    /// The groups cannot be analysed.
    #[error(transparent)]
    Anova(#[from] AnovaError),
    /// Something that is no p-value.
    #[error(transparent)]
    PValue(#[from] PValueError),
    /// More degrees of freedom than can be computed with.
    #[error(transparent)]
    Distribution(#[from] DistributionError),
}

/// Refuses fewer than `needed` observations.
pub(crate) fn at_least(n: usize, needed: usize) -> Result<(), StatisticError> {
    if n < needed { Err(StatisticError::TooFew { n, needed }) } else { Ok(()) }
}
