//! A range that holds the truth with a stated probability.

/// A closed range with the level at which it covers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Interval {
    /// Lower bound.
    pub lower: f64,
    /// Upper bound.
    pub upper: f64,
    /// The probability of covering the truth, in (0, 1).
    pub level: f64,
}
