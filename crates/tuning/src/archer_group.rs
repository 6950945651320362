//! The archer's own group, from shots of one arrow at one index.

use std::collections::BTreeMap;

use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{Level, PlanarSample, PooledSpread};

use crate::observation::Observations;
use crate::{ArcherReport, Spread};

/// How the shots of one arrow at one index scatter about their own mean, pooled over arrows, fletched and bare.
///
/// Shots of one sitting and with the bow unchanged are compared, so the archer's drift from end to end and the
/// reading of the hits are in it.
pub fn archer_group(seen: &Observations) -> ArcherReport {
    let repeated = alike(seen).into_iter().filter(|group| group.len() > 1);
    let samples: Vec<_> = repeated.filter_map(|group| sample(seen, &group)).collect();
    let pooled = PooledSpread::of(&samples);
    let spread = pooled.estimate(Level::P90).ok().map(|estimate| Spread {
        per_axis: Millimetres::new(estimate.value),
        interval: estimate.interval,
        degrees_of_freedom: pooled.degrees_of_freedom,
        shots: pooled.points,
    });
    ArcherReport { spread }
}

/// The shots of one arrow at one index in one sitting with the bow unchanged, each group by the places of its shots.
pub fn alike(seen: &Observations) -> Vec<Vec<usize>> {
    let mut groups: BTreeMap<_, Vec<usize>> = BTreeMap::new();
    for (at, shot) in seen.shots.iter().enumerate() {
        let alike = (shot.life, shot.bow, shot.sitting, shot.mark_rad.to_bits());
        groups.entry(alike).or_default().push(at);
    }
    groups.into_values().collect()
}

/// Where the shots at these places hit.
pub fn sample(seen: &Observations, shots: &[usize]) -> Option<PlanarSample> {
    PlanarSample::new(shots.iter().map(|&at| seen.shots[at].hit_mm).collect()).ok()
}
