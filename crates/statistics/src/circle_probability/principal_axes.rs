//! The principal axes of a 2×2 covariance.

use nalgebra::{Matrix2, Vector2};

/// The directions in which a planar covariance spreads most and least, and how far.
///
/// # Formula
/// With Σ = [a b; b c], m = (a + c)/2, d = (a − c)/2 and h = √(d² + b²) the eigenvalues are λ₁ = m + h and
/// λ₂ = det Σ / λ₁; the eigenvector of λ₁ is (d + h, b) or (b, h − d), whichever does not cancel.
///
/// # Source
/// Closed form of the symmetric 2×2 eigenproblem; λ₂ through the determinant keeps a flat ellipse flat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct PrincipalAxes {
    /// Unit vector along the wider axis; its sign is arbitrary. (1, 0) for a circle.
    pub(crate) major: Vector2<f64>,
    /// Standard deviation along [`major`](Self::major).
    pub(crate) major_sd: f64,
    /// Standard deviation across it, at most `major_sd`.
    pub(crate) minor_sd: f64,
}

impl PrincipalAxes {
    /// The axes of a positive semi-definite `covariance`; only its upper triangle is read.
    pub(crate) fn of(covariance: &Matrix2<f64>) -> Self {
        let (a, b, c) = (covariance.m11, covariance.m12, covariance.m22);
        let d = 0.5 * (a - c);
        let h = d.hypot(b);
        let largest = 0.5 * (a + c) + h;
        let along = if d >= 0.0 { Vector2::new(d + h, b) } else { Vector2::new(b, h - d) };
        Self {
            major: along.try_normalize(0.0).unwrap_or_else(Vector2::x),
            major_sd: largest.max(0.0).sqrt(),
            minor_sd: (determinant(a, b, c).max(0.0) / largest.max(f64::MIN_POSITIVE)).sqrt(),
        }
    }

    /// The unit vector a quarter turn counter-clockwise from [`major`](Self::major).
    pub(crate) fn minor(&self) -> Vector2<f64> {
        Vector2::new(-self.major.y, self.major.x)
    }
}

/// a·c − b² to about one unit in the last place (Kahan's difference of products): in a flat ellipse the two
/// nearly cancel, and what is left is the width.
fn determinant(a: f64, b: f64, c: f64) -> f64 {
    let square = b * b;
    let lost = (-b).mul_add(b, square);
    a.mul_add(c, -square) + lost
}
