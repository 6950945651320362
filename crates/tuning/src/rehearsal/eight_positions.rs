//! Eight positions, three times each.

use std::collections::HashMap;

use quarterturn_geometry::{Index, Offset};

use super::habit::misses;
use super::session::Session;
use super::{Outcome, Ruling};
use crate::{Setup, ShaftName, World};

const POSITIONS: u32 = 8;
const TIMES: u32 = 3;

/// Plays a dozen by a full table.
pub fn play(setup: &Setup, world: World, seed: u64) -> Outcome {
    let mut session = Session::begin(setup, world, seed);
    let positions: Vec<_> = (0..POSITIONS)
        .map(|place| Index::from_degrees(f64::from(place) * 360.0 / f64::from(POSITIONS)))
        .collect();
    let mut best: HashMap<ShaftName, (Offset, Index)> = HashMap::new();
    for &index in &positions {
        for (shaft, mean) in session.means_at(index) {
            let nearest = best.entry(shaft).or_insert((mean, index));
            if mean.length() < nearest.0.length() {
                *nearest = (mean, index);
            }
        }
    }
    let settle = |shaft: &ShaftName| match best.get(shaft) {
        Some((mean, index)) if mean.length() <= setup.tolerance => (Ruling::Keep, *index),
        Some((_, index)) => (Ruling::Retire, *index),
        None => (Ruling::Open, Index::TWELVE),
    };
    let settled: Vec<_> = setup.shafts.iter().map(|(shaft, _)| settle(shaft)).collect();
    session.close(settled)
}

impl Session {
    /// The mean miss of every shaft at one position, as many in an end as there are arrows for.
    fn means_at(&mut self, index: Index) -> Vec<(ShaftName, Offset)> {
        let Setup { shafts, arrows_per_end, .. } = self.history.setup.clone();
        let mut means: Vec<_> =
            shafts.into_iter().map(|(shaft, _)| (shaft, Offset::ZERO)).collect();
        for _ in 0..TIMES {
            for some in means.chunks_mut(arrows_per_end.saturating_sub(1).max(1)) {
                let bare = some.iter().map(|(shaft, _)| self.bare(shaft, index));
                let planned: Vec<_> = self.reference().into_iter().chain(bare).collect();
                let end = self.shoot(&planned);
                for ((_, mean), miss) in some.iter_mut().zip(misses(&end)) {
                    *mean = *mean + miss * (1.0 / f64::from(TIMES));
                }
            }
        }
        means
    }
}
