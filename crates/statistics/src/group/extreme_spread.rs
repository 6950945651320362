//! The largest distance between two points of a group.

use nalgebra::Vector2;

use super::convex_hull::{convex_hull, squared_diameter};
use crate::PlanarSample;

impl PlanarSample {
    /// The largest distance between any two points; 0 for a single point.
    ///
    /// [`expected_extreme_spread`](crate::expected_extreme_spread) says what a round normal group gives on average: it
    /// grows with the number of points, so that groups of unlike numbers cannot be compared by it.
    ///
    /// # Method
    /// With R the largest distance from the centroid and D the distance of some pair far apart, a point nearer to the
    /// centroid than D − R has nothing D away from it. Of the few others the convex hull is walked with calipers.
    pub fn extreme_spread(&self) -> f64 {
        let centroid = self.centroid();
        let (from_centroid, reach) = self.farthest_from(centroid);
        let (_, pair) = self.farthest_from(from_centroid);
        // Rounding must not leave out a point on the border.
        let near = (pair - reach) * (1.0 - 1e-9);
        let far = |p: &&Vector2<f64>| (*p - centroid).norm_squared() >= near.max(0.0).powi(2);
        let outer: Vec<_> = self.points().iter().filter(far).copied().collect();
        squared_diameter(&convex_hull(outer)).sqrt().max(pair)
    }

    /// The point farthest from `place`, and how far that is.
    fn farthest_from(&self, place: Vector2<f64>) -> (Vector2<f64>, f64) {
        let mut farthest = (place, 0.0);
        for point in self.points() {
            let squared = (point - place).norm_squared();
            if squared > farthest.1 {
                farthest = (*point, squared);
            }
        }
        (farthest.0, farthest.1.sqrt())
    }
}
