//! A number with how well it is known.

use crate::Interval;

/// An estimate with its standard error, its interval and how many observations it rests on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Estimate {
    /// The estimate.
    pub value: f64,
    /// The standard deviation of the estimate, itself estimated.
    pub standard_error: f64,
    /// The range that holds the truth at its level.
    pub interval: Interval,
    /// Number of observations.
    pub n: usize,
}
