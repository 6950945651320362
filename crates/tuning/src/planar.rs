//! A normal draw in the plane.

use quarterturn_geometry::Offset;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

/// A planar normal draw with `sd` per axis.
pub fn planar(random: &mut Pcg64, sd: f64) -> Offset {
    let x: f64 = StandardNormal.sample(random);
    let y: f64 = StandardNormal.sample(random);
    Offset::new(x * sd, y * sd)
}
