//! Both sides of a distribution at a point.

/// P(X ≤ x) and P(X > x), each with the digits it has where it is small.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Tails {
    pub(super) lower: f64,
    pub(super) upper: f64,
}

impl Tails {
    /// All of it above.
    pub(super) const ABOVE: Self = Self { lower: 0.0, upper: 1.0 };
    /// All of it below.
    pub(super) const BELOW: Self = Self { lower: 1.0, upper: 0.0 };

    /// Neither, for what is no number.
    pub(super) const UNKNOWN: Self = Self { lower: f64::NAN, upper: f64::NAN };

    pub(super) fn of_lower(lower: f64) -> Self {
        Self { lower, upper: 1.0 - lower }
    }

    pub(super) fn of_upper(upper: f64) -> Self {
        Self { lower: 1.0 - upper, upper }
    }
}
