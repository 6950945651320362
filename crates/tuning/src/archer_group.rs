//! The archer's own group, from shots of one arrow at one index.

use std::collections::BTreeMap;

use nalgebra::Vector2;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{Level, PlanarSample, PooledSpread};

use crate::observation::Observations;
use crate::{ArcherReport, Spread};

/// How the shots of one arrow at one index scatter about their own mean, pooled over arrows, fletched and bare.
///
/// Shots of one sitting and with the bow unchanged are compared, so the archer's drift from end to end and the
/// reading of the hits are in it.
pub fn archer_group(seen: &Observations) -> ArcherReport {
    let mut groups: BTreeMap<_, Vec<Vector2<f64>>> = BTreeMap::new();
    for shot in &seen.shots {
        let alike = (shot.life, shot.bow, shot.sitting, shot.mark_rad.to_bits());
        groups.entry(alike).or_default().push(shot.hit_mm);
    }
    let samples: Vec<_> =
        groups.into_values().filter_map(|hits| PlanarSample::new(hits).ok()).collect();
    let pooled = PooledSpread::of(&samples);
    let spread = pooled.estimate(Level::P90).ok().map(|estimate| Spread {
        per_axis: Millimetres::new(estimate.value),
        interval: estimate.interval,
        degrees_of_freedom: pooled.degrees_of_freedom,
    });
    ArcherReport { spread }
}
