//! The few ways in which a distribution can be impossible.

use thiserror::Error;

/// Why a distribution was refused.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum DistributionError {
    /// Degrees of freedom out of range.
    #[error("{value} degrees of freedom; more than 0 and at most {largest:e} are needed")]
    DegreesOfFreedom {
        /// What was given.
        value: f64,
        /// The most that the stated accuracy holds for.
        largest: f64,
    },
    /// A noncentrality out of range.
    #[error("a noncentrality of {value}; it lies between 0 and {largest:e}")]
    Noncentrality {
        /// What was given.
        value: f64,
        /// The most that the stated accuracy holds for.
        largest: f64,
    },
}

/// `value` where it can serve as degrees of freedom.
pub(super) fn degrees_of_freedom(value: f64, largest: f64) -> Result<f64, DistributionError> {
    if value > 0.0 && value <= largest {
        Ok(value)
    } else {
        Err(DistributionError::DegreesOfFreedom { value, largest })
    }
}
