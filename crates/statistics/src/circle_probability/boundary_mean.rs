//! The probability as a mean over the edge of the circle: one exponential a node, best for a small circle.

use std::f64::consts::TAU;

use nalgebra::{Matrix2, Vector2};

use super::Resolution;

/// Above this ratio of radius and smallest standard deviation the edge needs more nodes than strips do.
const LARGEST_RATIO: f64 = 10.0;

/// The probability, or `None` where the circle is too large for the spread.
///
/// # Formula
/// Green's theorem with polar angles about the mean, in the metric of Σ: with p(t) = r (cos t, sin t) and
/// q = (p − μ)ᵀ Σ⁻¹ (p − μ),
///
/// P = 1/2π ∮ p·(p − μ)/√(det Σ) · (1 − e^(−q/2))/q dt.
///
/// The integrand is periodic and entire, so that N evenly spaced nodes converge faster than geometrically: a shift of t
/// by iτ raises it by at most e^(κ² sinh²τ / 2) with κ = r over the smallest standard deviation, hence an error
/// of about e^(−N²/2κ²) for κ above one. The nodes at t + π are those at t with the sign turned.
pub(super) fn probability(
    mean: Vector2<f64>,
    covariance: &Matrix2<f64>,
    radius: f64,
    Resolution(fine): Resolution,
) -> Option<f64> {
    let (a, b, c) = (covariance.m11, covariance.m12, covariance.m22);
    let determinant = a * c - b * b;
    let half = 0.5 * (a - c);
    let largest = 0.5 * (a + c) + (half * half + b * b).sqrt();
    let ratio = radius * (largest / determinant).sqrt();
    // Written so that NaN and a vanishing determinant are refused.
    if !(ratio <= LARGEST_RATIO) {
        return None;
    }
    let nodes = (fine * (ratio + 1.5)).ceil();
    let scale = 1.0 / determinant;
    let (sin, cos) = (TAU / nodes).sin_cos();
    let (mut u, mut v) = (1.0, 0.0);
    let mut sum = 0.0;
    for _ in 0..nodes as usize {
        let (x, y) = (radius * u - mean.x, radius * v - mean.y);
        let q = scale * (c * x * x - 2.0 * b * x * y + a * y * y);
        sum += (u * x + v * y) * damped(q);
        (u, v) = (cos * u - sin * v, sin * u + cos * v);
    }
    Some(radius * scale.sqrt() * sum / nodes)
}

/// (1 − e^(−q/2))/q, by its series where the difference would cancel.
fn damped(q: f64) -> f64 {
    if q < 1e-3 {
        0.5 - q * (1.0 / 8.0 - q * (1.0 / 48.0 - q / 384.0))
    } else {
        (1.0 - (-0.5 * q).exp()) / q
    }
}
