//! The difference of the means of two samples.

use nalgebra::Matrix2;

use crate::ellipse::two_directions;
use crate::statistic_error::at_least;
use crate::{PlanarEstimate, PlanarSample, StatisticError};

impl PlanarSample {
    /// The centroid of this sample less that of `other`, which scatters in the same way.
    ///
    /// # Formula
    /// V = (1/n₁ + 1/n₂)(E₁ + E₂)/ν, ν = n₁ + n₂ − 2, E the scatter of each about its own centroid.
    ///
    /// # Assumptions
    /// Independent points, normal with one covariance. [`unequal_difference`](Self::unequal_difference) does without that.
    ///
    /// # Errors
    /// [`StatisticError`] for fewer than four points in all, or scatter in one direction only.
    ///
    /// # Source
    /// H. Hotelling, 1931, The generalization of Student's ratio, Annals of Mathematical Statistics 2, 360 (from memory).
    pub fn pooled_difference(&self, other: &Self) -> Result<PlanarEstimate, StatisticError> {
        let n = self.n() + other.n();
        at_least(n, 4)?;
        let scatter = self.scatter() + other.scatter();
        two_directions(&scatter)?;
        let degrees_of_freedom = (n - 2) as f64;
        let share = (self.n() as f64).recip() + (other.n() as f64).recip();
        let covariance = scatter * (share / degrees_of_freedom);
        let value = self.centroid() - other.centroid();
        Ok(PlanarEstimate { value, covariance, degrees_of_freedom, n })
    }

    /// The centroid of this sample less that of `other`, each with a covariance of its own.
    ///
    /// # Formula
    /// V = V₁ + V₂, Vᵢ = Sᵢ/nᵢ, with (p + p²)/Σ (tr(Aᵢ²) + (tr Aᵢ)²)/(nᵢ − 1) degrees of freedom, Aᵢ = Vᵢ V⁻¹, p = 2: between
    /// the smaller nᵢ − 1 and n₁ + n₂ − 2.
    ///
    /// # Assumptions
    /// Independent normal points. That the covariance follows Wishart's distribution is an approximation: simulated, a test at
    /// 5 % rejects a true hypothesis in 3.5 to 6 % from five points each on.
    ///
    /// # Errors
    /// [`StatisticError`] for fewer than three points in either, or scatter in one direction only.
    ///
    /// # Source
    /// K. Krishnamoorthy, J. Yu, 2004, Modified Nel and Van der Merwe test for the multivariate Behrens–Fisher problem,
    /// Statistics & Probability Letters 66, 161 (from memory).
    pub fn unequal_difference(&self, other: &Self) -> Result<PlanarEstimate, StatisticError> {
        at_least(self.n().min(other.n()), 3)?;
        let own = |sample: &Self| {
            let n = sample.n() as f64;
            (sample.scatter() / (n * (n - 1.0)), n - 1.0)
        };
        let parts = [own(self), own(other)];
        let covariance = parts[0].0 + parts[1].0;
        two_directions(&covariance)?;
        let inverse = covariance.try_inverse().ok_or(StatisticError::Collinear)?;
        let terms = parts.map(|(part, freedom)| {
            let shared: Matrix2<f64> = part * inverse;
            ((shared * shared).trace() + shared.trace().powi(2)) / freedom
        });
        Ok(PlanarEstimate {
            value: self.centroid() - other.centroid(),
            covariance,
            degrees_of_freedom: 6.0 / (terms[0] + terms[1]),
            n: self.n() + other.n(),
        })
    }
}
