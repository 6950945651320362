//! Whether a group moves from point to point.

use nalgebra::{Matrix2, Vector2};

use crate::ellipse::two_directions;
use crate::statistic_error::at_least;
use crate::{PlanarEstimate, PlanarSample, StatisticError};

impl PlanarSample {
    /// How far the points move on average from one to the next, in the order in which they stand.
    ///
    /// `sample.drift()?.test(Vector2::zeros())` is the test against no drift.
    ///
    /// # Formula
    /// With tᵢ = i − (n + 1)/2 and T = Σtᵢ² the slope is b = Σ tᵢ pᵢ/T; what is left scatters with E = Σ dᵢ dᵢᵀ − T b bᵀ, so
    /// that b has the covariance E/((n − 2) T) with n − 2 degrees of freedom.
    ///
    /// # Assumptions
    /// Independent normal points about a place that moves along a line at an even pace. Wandering to and fro is not seen.
    ///
    /// # Errors
    /// [`StatisticError`] for fewer than four points, or where what is left lies on one line.
    ///
    /// # Source
    /// Multivariate regression on one covariate: A. C. Rencher, 2002, Methods of Multivariate Analysis, section 10.4 (from
    /// memory).
    pub fn drift(&self) -> Result<PlanarEstimate, StatisticError> {
        at_least(self.n(), 4)?;
        let n = self.n() as f64;
        let places = (0..self.n()).map(|i| i as f64 - 0.5 * (n - 1.0));
        let squares = n * (n * n - 1.0) / 12.0;
        let centroid = self.centroid();
        let moments = places.zip(self.points()).map(|(t, p)| t * (p - centroid));
        let value = moments.sum::<Vector2<f64>>() / squares;
        let left: Matrix2<f64> = self.scatter() - squares * value * value.transpose();
        // A rest that is rounding beside the whole is no rest.
        if left.trace() <= 1e-14 * self.scatter().trace() {
            return Err(StatisticError::NoScatter);
        }
        two_directions(&left)?;
        let degrees_of_freedom = n - 2.0;
        let covariance = left / (degrees_of_freedom * squares);
        Ok(PlanarEstimate { value, covariance, degrees_of_freedom, n: self.n() })
    }
}
