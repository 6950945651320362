//! Whether a group is round.

use nalgebra::Vector2;

use crate::circle_probability::PrincipalAxes;
use crate::statistic_error::at_least;
use crate::{PlanarSample, StatisticError, TestResult};

impl PlanarSample {
    /// Tests whether the points spread as far in all directions.
    ///
    /// # Formula
    /// W = 4 det S/(tr S)², 1 for a round sample and 0 for points on a line; p = W^((n − 2)/2), which is exact.
    ///
    /// # Assumptions
    /// Independent points of one normal distribution.
    ///
    /// # Errors
    /// [`StatisticError`] for fewer than three points, or points that all coincide.
    ///
    /// # Source
    /// J. W. Mauchly, 1940, Significance test for sphericity of a normal n-variate distribution, Annals of Mathematical
    /// Statistics 11, 204; the distribution in two dimensions: T. W. Anderson, 2003, An Introduction to Multivariate
    /// Statistical Analysis, section 10.7 (from memory).
    pub fn sphericity_test(&self) -> Result<TestResult, StatisticError> {
        at_least(self.n(), 3)?;
        let axes = PrincipalAxes::of(&self.scatter());
        let squares = Vector2::new(axes.major_sd, axes.minor_sd).norm_squared();
        if squares <= 0.0 {
            return Err(StatisticError::NoScatter);
        }
        let statistic = (2.0 * axes.major_sd * axes.minor_sd / squares).powi(2).min(1.0);
        let p_value = statistic.powf(0.5 * (self.n() - 2) as f64);
        Ok(TestResult { statistic, p_value, n: self.n() })
    }
}
