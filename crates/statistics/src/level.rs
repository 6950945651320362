//! A probability strictly between 0 and 1.

use thiserror::Error;

/// A probability strictly between 0 and 1: the coverage of an interval, or where a quantile is asked for.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Level(f64);

impl Level {
    /// One half.
    pub const P50: Self = Self(0.50);
    /// Nine in ten.
    pub const P90: Self = Self(0.90);
    /// Nineteen in twenty.
    pub const P95: Self = Self(0.95);
    /// Ninety-nine in a hundred.
    pub const P99: Self = Self(0.99);

    /// A level of `probability`.
    ///
    /// # Errors
    /// [`LevelError`] unless 0 < `probability` < 1.
    pub fn new(probability: f64) -> Result<Self, LevelError> {
        if probability > 0.0 && probability < 1.0 {
            Ok(Self(probability))
        } else {
            Err(LevelError { probability })
        }
    }

    /// The probability, in (0, 1).
    pub const fn probability(self) -> f64 {
        self.0
    }

    /// Where a central interval of this coverage begins: (1 − p)/2.
    #[must_use]
    pub fn lower_end(self) -> Self {
        Self(0.5 * (1.0 - self.0))
    }

    /// Where a central interval of this coverage ends: (1 + p)/2.
    #[must_use]
    pub fn upper_end(self) -> Self {
        // The largest double below 1 would round up to it.
        Self((0.5 + 0.5 * self.0).min(1.0 - 0.5 * f64::EPSILON))
    }
}

/// A number that is no probability between 0 and 1.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[error("{probability} is not a probability between 0 and 1, both left out; try 0.95")]
pub struct LevelError {
    /// What was given.
    pub probability: f64,
}
