//! The probability that a planar normal point falls inside a circle.

mod boundary_mean;
mod strips;

use nalgebra::{Matrix2, Vector2};

use crate::PrincipalAxes;

/// How finely an integrand is sampled: a number ρ such that what is neglected is about e^(−ρ²/2).
///
/// A Gaussian bump of standard deviation s summed at steps of 2πs/ρ is off by about that relative amount (Poisson
/// summation: the step sees the bump's Fourier transform at ρ/s), and as much lies beyond ρ standard deviations.
#[derive(Clone, Copy)]
struct Resolution(f64);

/// e^(−ρ²/2) = 2e-15.
const FINE: Resolution = Resolution(8.2);
/// e^(−ρ²/2) = 4e-5.
const COARSE: Resolution = Resolution(4.5);

/// The probability that a point, normal about `mean` with `covariance`, lies within `radius` of the origin.
///
/// All three in the same unit of length (the covariance in its square). Where the covariance vanishes along one axis
/// or both, the result is the exact limit; a point exactly on the circle counts as inside.
///
/// # Formula
/// P = ∬ over |p| ≤ r of N(p; μ, Σ) dp. Up to a ratio of radius and smallest standard deviation of 10 as a
/// mean over the circle's edge, beyond it as a sum over strips along one principal axis; both in this module.
///
/// # Accuracy
/// 1e-11 absolute, offset, elliptical and extremely flat cases included, as long as the smallest standard deviation is
/// above 1e-6 of the radius; below that the arguments' own rounding decides, as it moves the edge by about
/// 1e-16 of the radius.
///
/// # Assumptions
/// Finite arguments, a positive semi-definite covariance (only its upper triangle is read) and a radius not below 0. A
/// NaN gives a NaN; nothing else does.
///
/// # Source
/// The integral: e.g. A. R. DiDonato, M. P. Jarnagin, 1961, Integration of the general bivariate Gaussian
/// distribution over an offset circle, Mathematics of Computation 15 (from memory). Trapezoidal sums of periodic
/// and of Gaussian integrands: L. N. Trefethen, J. A. C. Weideman, 2014, SIAM Review 56, sections 3 and 5 (from memory).
pub fn probability_within_circle(mean: Vector2<f64>, covariance: &Matrix2<f64>, radius: f64) -> f64 {
    within(mean, covariance, radius, FINE)
}

/// [`probability_within_circle`] for inner loops: absolute error at most 2e-4, at a third of the time.
pub fn approximate_probability_within_circle(
    mean: Vector2<f64>,
    covariance: &Matrix2<f64>,
    radius: f64,
) -> f64 {
    within(mean, covariance, radius, COARSE)
}

fn within(mean: Vector2<f64>, covariance: &Matrix2<f64>, radius: f64, fine: Resolution) -> f64 {
    boundary_mean::probability(mean, covariance, radius, fine)
        .unwrap_or_else(|| strips::probability(mean, &PrincipalAxes::of(covariance), radius, fine))
        .clamp(0.0, 1.0)
}
