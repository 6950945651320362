//! What a test of a hypothesis says.

use crate::Level;

/// A statistic, and how often chance alone would carry it as far if the hypothesis held.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TestResult {
    /// The statistic; each test says which.
    pub statistic: f64,
    /// The probability of a statistic at least as far, in [0, 1].
    pub p_value: f64,
    /// Number of observations.
    pub n: usize,
}

impl TestResult {
    /// Whether the hypothesis is rejected where it is to be kept, if true, with probability `level`: p ≤ 1 − level.
    #[must_use]
    pub fn rejects_at(self, level: Level) -> bool {
        self.p_value <= 1.0 - level.probability()
    }
}
