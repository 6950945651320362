//! The place with the least sum of distances.

use nalgebra::Vector2;

use crate::PlanarSample;

/// Steps after which the search ends; a few dozen are usual.
const STEPS: usize = 10_000;

/// A step shorter than this share of the mean radius is the last.
const SHORT: f64 = 1e-14;

impl PlanarSample {
    /// The place from which the distances to all points have the least sum: a middle that few far points hardly move.
    ///
    /// Of points on one line, an even number of them, any place between the two middle ones will do; one of these is given.
    ///
    /// # Method
    /// Weiszfeld's steps to the mean weighted by 1/distance, from the centroid. At each step the nearest point is asked
    /// whether it is the place itself: it is where the unit vectors from it to all others sum to no more than the number of
    /// points that coincide with it. A place that is no such point but meets one steps past it.
    ///
    /// # Source
    /// E. Weiszfeld, 1937, Sur le point pour lequel la somme des distances de n points donnés est minimum, Tôhoku
    /// Mathematical Journal 43, 355; the corners: Y. Vardi, C.-H. Zhang, 2000, The multivariate L1-median and associated data
    /// depth, PNAS 97, 1423 (from memory).
    pub fn geometric_median(&self) -> Vector2<f64> {
        let short = SHORT * self.mean_radius();
        let mut place = self.centroid();
        for _ in 0..STEPS {
            let nearest = self.nearest(place);
            let here = self.pull(nearest);
            if here.sum.norm() <= here.coincident {
                return nearest;
            }
            let pull = if place == nearest { here } else { self.pull(place) };
            let step = pull.step();
            place += step;
            if step.norm() <= short {
                break;
            }
        }
        place
    }

    fn nearest(&self, place: Vector2<f64>) -> Vector2<f64> {
        let away = |p: &Vector2<f64>| (p - place).norm_squared();
        let nearer = |a: &&Vector2<f64>, b: &&Vector2<f64>| away(a).total_cmp(&away(b));
        self.points().iter().min_by(nearer).copied().unwrap_or(place)
    }

    fn pull(&self, place: Vector2<f64>) -> Pull {
        let mut pull = Pull::default();
        for point in self.points() {
            let away = point - place;
            let distance = away.norm();
            if distance > 0.0 {
                pull.sum += away / distance;
                pull.weight += 1.0 / distance;
            } else {
                pull.coincident += 1.0;
            }
        }
        pull
    }
}

/// How the points pull at a place, each with the force of one.
#[derive(Clone, Copy, Default)]
struct Pull {
    /// The sum of unit vectors toward the points elsewhere.
    sum: Vector2<f64>,
    /// Σ 1/distance over them.
    weight: f64,
    /// How many points coincide with the place.
    coincident: f64,
}

impl Pull {
    /// To the mean weighted by 1/distance; from a place that coincides with points, as much less as these hold back.
    fn step(&self) -> Vector2<f64> {
        let held = if self.coincident > 0.0 { self.coincident / self.sum.norm() } else { 0.0 };
        self.sum / self.weight * (1.0 - held)
    }
}
