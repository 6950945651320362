//! The mean of one end in one coordinate, and what its readings differ from it.

use crate::design::Combination;
use crate::posterior::Posterior;
use crate::readings::{Coordinate, Reading};

/// The end's own mean e given the unknowns: (values − rows·θ), with variance 1 / weights.
pub struct EndMean {
    rows: Combination,
    /// Its mean over the posterior.
    mean: f64,
    /// The variance of rows·θ.
    known: f64,
    /// 1 / (p + Σ w).
    own: f64,
}

impl EndMean {
    /// The mean of a coordinate's end.
    pub fn of(coordinate: &Coordinate, posterior: &Posterior) -> Self {
        let (rows, values, weights) = coordinate.sums();
        let rows = rows.scaled(1.0 / weights);
        Self {
            mean: values / weights - posterior.mean_of(&rows),
            known: posterior.variance_of(&rows),
            own: 1.0 / weights,
            rows,
        }
    }

    /// E[e²].
    pub fn expected_square(&self) -> f64 {
        self.mean * self.mean + self.known + self.own
    }

    /// E[(y − z·θ − e)²] of a reading.
    pub fn expected_residual_square(&self, reading: &Reading, posterior: &Posterior) -> f64 {
        let row = &reading.row;
        let across = posterior.covariance_of(&self.rows, row);
        let variance = posterior.variance_of(row) - 2.0 * across + self.known + self.own;
        self.residual(reading, posterior).powi(2) + variance
    }

    /// E[(y − z·θ − e) (with·θ)] of a reading.
    pub fn expected_residual_product(
        &self,
        reading: &Reading,
        with: &Combination,
        posterior: &Posterior,
    ) -> f64 {
        let across =
            posterior.covariance_of(&reading.row, with) - posterior.covariance_of(&self.rows, with);
        self.residual(reading, posterior) * posterior.mean_of(with) - across
    }

    fn residual(&self, reading: &Reading, posterior: &Posterior) -> f64 {
        reading.value - posterior.mean_of(&reading.row) - self.mean
    }
}
