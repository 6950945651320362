//! Hotelling's test and the region of a mean.

use nalgebra::Vector2;

use crate::ellipse::Metric;
use crate::planar_f::{planar_f_quantile, planar_f_upper_tail};
use crate::{Ellipse, Level, PlanarEstimate, TestResult};

impl PlanarEstimate {
    /// Tests whether the truth is `hypothesis`; the statistic is T².
    ///
    /// # Formula
    /// T² = dᵀ V⁻¹ d with d = value − hypothesis; (ν − 1)/(2ν) T² is F with 2 and ν − 1 degrees of freedom.
    ///
    /// # Source
    /// H. Hotelling, 1931, The generalization of Student's ratio, Annals of Mathematical Statistics 2, 360 (from memory).
    pub fn test(&self, hypothesis: Vector2<f64>) -> TestResult {
        let nu = self.degrees_of_freedom;
        let metric = Metric::of(&self.covariance);
        let statistic = metric.map_or(f64::INFINITY, |m| m.squared(self.value - hypothesis));
        let p_value = planar_f_upper_tail((nu - 1.0) / (2.0 * nu) * statistic, nu - 1.0);
        TestResult { statistic, p_value, n: self.n }
    }

    /// The ellipse that covers the truth with probability `level`.
    ///
    /// # Formula
    /// (μ − value)ᵀ V⁻¹ (μ − value) ≤ c², c² = 2ν/(ν − 1) F, F the quantile with 2 and ν − 1 degrees of freedom.
    pub fn region(&self, level: Level) -> Ellipse {
        let matrix = self.covariance * self.hotelling_quantile(level);
        Ellipse { centre: self.value, matrix, level: level.probability(), n: self.n }
    }

    /// c², the quantile of T².
    pub(super) fn hotelling_quantile(&self, level: Level) -> f64 {
        let nu = self.degrees_of_freedom;
        2.0 * nu / (nu - 1.0) * planar_f_quantile(nu - 1.0, level)
    }
}
