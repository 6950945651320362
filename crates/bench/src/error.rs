//! What cannot be computed with.

use quarterturn_geometry::Millimetres;
use thiserror::Error;

/// Why there is no answer.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum BenchError {
    /// A mass, a length or a weight that is zero, negative or not finite.
    #[error("{value} cannot be: more than 0 is expected")]
    NotAboveZero {
        /// What was given.
        value: f64,
    },
    /// A balance point off the shaft.
    #[error("a balance point at {balance} is not on a shaft of {length}")]
    OffTheShaft {
        /// From the groove of the nock to the balance point.
        balance: Millimetres,
        /// From the groove of the nock to the end of the shaft.
        length: Millimetres,
    },
    /// A shaft that no cut makes longer.
    #[error("a shaft of {length} cannot be cut to {target}")]
    TooShort {
        /// How long it is.
        length: Millimetres,
        /// How long it was to be.
        target: Millimetres,
    },
    /// More is asked for than there is.
    #[error("{wanted} of {available} shafts cannot be chosen")]
    TooFew {
        /// How many were asked for.
        wanted: usize,
        /// How many there are.
        available: usize,
    },
    /// A number that is infinite or not a number, or a measure of another count of shafts than the first.
    #[error("every measure needs one finite number for each shaft")]
    NotOneEach,
    /// Nothing to compare by.
    #[error("at least one measure is needed")]
    NoMeasure,
}

/// A value above zero.
pub(crate) fn above_zero(value: f64) -> Result<f64, BenchError> {
    if value.is_finite() && value > 0.0 {
        Ok(value)
    } else {
        Err(BenchError::NotAboveZero { value })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_message_says_what_is_needed() {
        assert_eq!(
            above_zero(-1.0).unwrap_err().to_string(),
            "-1 cannot be: more than 0 is expected"
        );
        let told = [BenchError::NotOneEach, BenchError::NoMeasure].map(|error| error.to_string());
        let one_each = "every measure needs one finite number for each shaft";
        assert_eq!(told, [one_each, "at least one measure is needed"]);
    }
}
