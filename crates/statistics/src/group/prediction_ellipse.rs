//! Where one more point falls.

use crate::ellipse::two_directions;
use crate::planar_f::planar_f_quantile;
use crate::statistic_error::at_least;
use crate::{Ellipse, Level, PlanarSample, StatisticError};

impl PlanarSample {
    /// The ellipse in which one more point of the same kind falls with probability `level`.
    ///
    /// That of the mean is `sample.mean_estimate()?.region(level)`.
    ///
    /// # Formula
    /// (p − p̄)ᵀ S⁻¹ (p − p̄) ≤ (1 + 1/n) 2(n − 1)/(n − 2) F, F the quantile with 2 and n − 2 degrees of freedom.
    ///
    /// # Assumptions
    /// Independent points of one normal distribution. The probability is that over samples *and* the point to come.
    ///
    /// # Errors
    /// [`StatisticError`] for fewer than three points, or points on one line.
    ///
    /// # Source
    /// V. Chew, 1966, Confidence, prediction, and tolerance regions for the multivariate normal distribution, Journal of the
    /// American Statistical Association 61, 605 (from memory).
    pub fn prediction_ellipse(&self, level: Level) -> Result<Ellipse, StatisticError> {
        at_least(self.n(), 3)?;
        two_directions(&self.scatter())?;
        let n = self.n() as f64;
        let factor = (1.0 + 1.0 / n) * 2.0 / (n - 2.0) * planar_f_quantile(n - 2.0, level);
        let matrix = self.scatter() * factor;
        Ok(Ellipse { centre: self.centroid(), matrix, level: level.probability(), n: self.n() })
    }
}
