//! The mean distance from the centroid.

use std::f64::consts::FRAC_PI_2;

use crate::PlanarSample;
use crate::strands::summed;

impl PlanarSample {
    /// The mean distance of the points from their own centroid; 0 for a single point.
    ///
    /// # Formula
    /// Σ |pᵢ − p̄|/n. [`expected_mean_radius`] says what a round normal group gives on average.
    pub fn mean_radius(&self) -> f64 {
        let centroid = self.centroid();
        let [sum] = summed(self.points(), |p| {
            let d = p - centroid;
            [(d.x * d.x + d.y * d.y).sqrt()]
        });
        sum / self.n() as f64
    }
}

/// The mean radius of `n` points on average, as a multiple of their standard deviation per axis; 0 below two points.
///
/// # Formula
/// √(π/2) √((n − 1)/n): a point lies from the centroid of its own sample by Rayleigh's distribution of scale σ√(1 − 1/n).
///
/// # Assumptions
/// Independent points, normal with the same spread in all directions.
pub fn expected_mean_radius(n: usize) -> f64 {
    let n = n.max(1) as f64;
    (FRAC_PI_2 * (n - 1.0) / n).sqrt()
}
