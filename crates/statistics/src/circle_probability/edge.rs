//! The probability as a mean over the edge of the circle: cheap while the circle is not large.

use std::f64::consts::PI;

use nalgebra::{Matrix2, Vector2};

use super::resolution::{Resolution, whole};

/// The probability, or `None` where the circle is too large for the spread.
///
/// # Formula
/// Green's theorem with polar angles about the mean, in the metric of Σ: with p(t) = r (cos t, sin t) and
/// q = (p − μ)ᵀ Σ⁻¹ (p − μ),
///
/// P = 1/2π ∮ p·(p − μ)/√(det Σ) · (1 − e^(−q/2))/q dt.
///
/// The integrand is periodic and entire: moving t by iτ raises it by at most e^(κ² sinh²τ / 2), κ = r over the
/// smallest standard deviation. N evenly spaced nodes are therefore off by about e^(−N²/2κ²) where κ is large.
pub(super) fn probability<R: Resolution>(
    mean: Vector2<f64>,
    covariance: &Matrix2<f64>,
    radius: f64,
) -> Option<f64> {
    let (a, b, c) = (covariance.m11, covariance.m12, covariance.m22);
    let determinant = a * c - b * b;
    let half = 0.5 * (a - c);
    let largest = 0.5 * (a + c) + (half * half + b * b).sqrt();
    let ratio = radius * (largest / determinant).sqrt();
    if ratio.is_nan() || ratio > R::LARGEST_RATIO {
        return None;
    }
    let (xx, xy, yy) = (c / determinant, -2.0 * b / determinant, a / determinant);
    // Nodes come in fours, a quarter turn apart. One and a half is for small κ, where the sine matters.
    let fours = whole(0.25 * R::EDGE * (ratio + 1.5));
    let (sin, cos) = (0.5 * PI / fours as f64).sin_cos();
    let (mut u, mut v) = (1.0, 0.0);
    let mut sums = [0.0; 4];
    for _ in 0..fours {
        let (us, vs) = ([u, -u, -v, v], [v, -v, u, -u]);
        // Counted and not zipped: so the compiler takes two or four nodes at once.
        for node in 0..4 {
            let (x, y) = (radius * us[node] - mean.x, radius * vs[node] - mean.y);
            let square = xx * x * x + xy * x * y + yy * y * y;
            sums[node] += (us[node] * x + vs[node] * y) * R::damped(square);
        }
        (u, v) = (cos * u - sin * v, sin * u + cos * v);
    }
    let sum: f64 = sums.iter().sum();
    Some(radius * sum / (4.0 * fours as f64 * determinant.sqrt()))
}
