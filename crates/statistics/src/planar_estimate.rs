//! A planar quantity with how well it is known.

use nalgebra::{Matrix2, Vector2};

/// A mean point, a difference of two, or a drift: with its covariance, itself estimated.
///
/// `value` is normal about the truth, and `covariance` times `degrees_of_freedom` follows Wishart's distribution
/// independently of it. So T² = (value − μ)ᵀ covariance⁻¹ (value − μ) follows Hotelling's distribution with two dimensions, and
/// along any one direction the value over its standard error follows Student's t.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlanarEstimate {
    /// The estimate.
    pub value: Vector2<f64>,
    /// Its covariance, positive definite.
    pub covariance: Matrix2<f64>,
    /// Degrees of freedom of the covariance, more than 1; they need not be whole.
    pub degrees_of_freedom: f64,
    /// Number of observations.
    pub n: usize,
}
