//! How widely the shafts of a dozen land about their own middle.

use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{Level, PlanarSample, PooledSpread};
use quarterturn_tuning::Spread;

use crate::plot::target_plot::hits::HitMark;

/// The standard deviation per axis of some hits about their middle, with its 90 % interval; nothing of fewer than two.
pub fn spread(hits: &[&HitMark]) -> Option<Spread> {
    let points = hits.iter().map(|hit| [hit.at.x_mm, hit.at.y_mm].into()).collect();
    let sample = PlanarSample::new(points).ok()?;
    let pooled = PooledSpread::of([&sample]);
    let estimate = pooled.estimate(Level::P90).ok()?;
    Some(Spread {
        per_axis: Millimetres::new(estimate.value),
        interval: estimate.interval,
        degrees_of_freedom: pooled.degrees_of_freedom,
        shots: pooled.points,
    })
}
