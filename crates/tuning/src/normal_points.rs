//! A few points that stand for the standard normal in four dimensions.

use std::sync::LazyLock;

use nalgebra::{Matrix4, Vector4};
use quarterturn_statistics::Level;
use quarterturn_statistics::distributions::normal;

/// Pairs of points.
const PAIRS: usize = 16;

/// The root of x⁵ = x + 1.
const ROOT: f64 = 1.167_303_978_261_418_7;

/// Evenly strewn points of the standard normal in four dimensions, each with its mirror image; their mean is zero and
/// their covariance the identity.
///
/// # Source
/// Roberts, "The unreasonable effectiveness of quasirandom sequences" (2018): the additive recurrence
/// uₙ = ½ + n (1/ρ, 1/ρ², 1/ρ³, 1/ρ⁴) mod 1 with ρ⁵ = ρ + 1; from memory.
pub fn normal_points() -> &'static [Vector4<f64>; 2 * PAIRS] {
    static POINTS: LazyLock<[Vector4<f64>; 2 * PAIRS]> = LazyLock::new(|| {
        let strewn: [Vector4<f64>; PAIRS] = std::array::from_fn(strewn);
        let covariance: Matrix4<f64> =
            strewn.iter().map(|point| point * point.transpose()).sum::<Matrix4<f64>>()
                / PAIRS as f64;
        let white = covariance.cholesky().and_then(|root| root.l().try_inverse());
        let white = white.unwrap_or_else(Matrix4::identity);
        std::array::from_fn(|at| {
            let mirror = if at % 2 == 0 { 1.0 } else { -1.0 };
            white * strewn[at / 2] * mirror
        })
    });
    &POINTS
}

/// A point of the recurrence, mapped by the normal quantile.
fn strewn(at: usize) -> Vector4<f64> {
    Vector4::new(1.0, 2.0, 3.0, 4.0).map(|axis| {
        let even = (0.5 + (at + 1) as f64 * ROOT.powf(-axis)).fract();
        Level::new(even).map_or(0.0, normal::quantile)
    })
}
