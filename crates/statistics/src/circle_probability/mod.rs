//! The probability that a planar normal point falls inside a circle.

mod edge;
mod principal_axes;
mod resolution;
mod strips;

use nalgebra::{Matrix2, Vector2};

pub(crate) use principal_axes::PrincipalAxes;
use resolution::{Coarse, Fine, Resolution};

/// The probability that a point, normal about `mean` with `covariance`, lies within `radius` of the origin.
///
/// All three in the same unit of length (the covariance in its square). Where the covariance vanishes along one axis
/// or both, the result is the exact limit; a point exactly on the circle counts as inside.
///
/// # Formula
/// P = ∬ over |p| ≤ r of N(p; μ, Σ) dp: a mean over the circle's edge while the radius is at most 24 times the smallest
/// standard deviation (20 for the quick form), a sum over strips along one principal axis beyond that. Two special
/// cases in closed form: 1 − e^(−r²/2σ²) where μ = 0 and Σ = σ² I, and the noncentral χ² with two degrees of freedom,
/// at r²/σ² with noncentrality |μ|²/σ², for any μ.
///
/// # Accuracy
/// 1e-11 absolute (measured: 4e-12), offset, elliptical and extremely flat cases included, as long as the smallest
/// standard deviation is above 1e-6 of the radius; below that about 1e-16 over that ratio.
///
/// # Assumptions
/// Finite arguments with lengths up to 1e70, standard deviations not below 1e-70 unless 0, a positive semi-definite
/// covariance (only its upper triangle is read) and a radius not below 0. Anything else gives a NaN or some number from 0
/// to 1, never a panic or an endless loop.
///
/// # Source
/// The integral: A. R. Di Donato, M. P. Jarnagin, 1961, Integration of the general bivariate Gaussian
/// distribution over an offset circle, Mathematics of Computation 15 (from memory). Why few nodes suffice: L. N.
/// Trefethen, J. A. C. Weideman, 2014, The exponentially convergent trapezoidal rule, SIAM Review 56 (from memory).
///
/// # Example
/// ```
/// use nalgebra::{Matrix2, Vector2};
/// use quarterturn_statistics::probability_within_circle;
///
/// // Centred, two standard deviations in radius: 1 − e⁻².
/// let inside = probability_within_circle(Vector2::zeros(), &Matrix2::identity(), 2.0);
/// assert!((inside - 0.864_664_716_763).abs() < 1e-12);
/// ```
pub fn probability_within_circle(
    mean: Vector2<f64>,
    covariance: &Matrix2<f64>,
    radius: f64,
) -> f64 {
    within::<Fine>(mean, covariance, radius)
}

/// [`probability_within_circle`] for inner loops: within 1e-4 of it, in half of the time or less.
///
/// Measured over offsets up to four radii, standard deviations from 0.05 to 3 radii and axis ratios from 1 to 5, and
/// over the cases of 34 digits: 6e-5 at worst.
pub fn approximate_probability_within_circle(
    mean: Vector2<f64>,
    covariance: &Matrix2<f64>,
    radius: f64,
) -> f64 {
    within::<Coarse>(mean, covariance, radius)
}

fn within<R: Resolution>(mean: Vector2<f64>, covariance: &Matrix2<f64>, radius: f64) -> f64 {
    edge::probability::<R>(mean, covariance, radius)
        .unwrap_or_else(|| strips::probability::<R>(mean, PrincipalAxes::of(covariance), radius))
        .clamp(0.0, 1.0)
}
