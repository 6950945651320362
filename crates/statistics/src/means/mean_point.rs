//! The mean of one sample with what is known of it.

use nalgebra::Vector2;

use crate::ellipse::two_directions;
use crate::statistic_error::at_least;
use crate::{PlanarEstimate, PlanarSample, StatisticError};

impl PlanarSample {
    /// The centroid with its covariance S/n, n − 1 degrees of freedom.
    ///
    /// # Assumptions
    /// Independent points of one normal distribution.
    ///
    /// # Errors
    /// [`StatisticError`] for fewer than three points, or points on one line.
    pub fn mean_estimate(&self) -> Result<PlanarEstimate, StatisticError> {
        at_least(self.n(), 3)?;
        two_directions(&self.scatter())?;
        let degrees_of_freedom = (self.n() - 1) as f64;
        let covariance = self.scatter() / (degrees_of_freedom * self.n() as f64);
        Ok(PlanarEstimate { value: self.centroid(), covariance, degrees_of_freedom, n: self.n() })
    }

    /// The mean of the differences between the points of this sample and their partners in `other`: this less the other.
    ///
    /// # Assumptions
    /// Pairs independent of each other, their differences of one normal distribution.
    ///
    /// # Errors
    /// [`StatisticError`] where the numbers differ, for fewer than three pairs, or differences that are too large or on one line.
    pub fn paired_difference(&self, other: &Self) -> Result<PlanarEstimate, StatisticError> {
        if self.n() != other.n() {
            return Err(StatisticError::CountsDiffer { first: self.n(), second: other.n() });
        }
        let pairs = self.points().iter().zip(other.points());
        let differences: Vec<Vector2<f64>> = pairs.map(|(one, two)| one - two).collect();
        Self::new(differences)?.mean_estimate()
    }
}
