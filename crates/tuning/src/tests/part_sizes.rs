//! How large a dozen's faults are is learned from the dozen.

use super::journal::Journal;
use crate::learn::learn;
use crate::observation::Observations;
use crate::{Scales, World};

/// The size of what turns once, as learned after three shots of each shaft, the middle one of several dozens, mm.
fn learned_mm(world: World) -> f64 {
    let mut sizes: Vec<f64> = (0..15)
        .map(|seed| {
            let mut journal = Journal::of(12);
            let mut archer = journal.archer(world, seed);
            journal.follow(&mut archer, 12);
            let seen = Observations::of(&journal.history);
            learn(&seen, &Scales::at(journal.history.setup.distance)).scales.turning_mm
        })
        .collect();
    sizes.sort_by(f64::total_cmp);
    sizes[sizes.len() / 2]
}

/// Faults of a third, of the whole and of twice what is expected, in a steady hand.
#[test]
fn a_good_dozen_and_a_crooked_one_are_told_apart() {
    let faults = |times: f64| World {
        centre_mm: times * World::STEADY.centre_mm,
        turning_mm: times * World::STEADY.turning_mm,
        stiff_mm: times * World::STEADY.stiff_mm,
        crooked_share: 0.0,
        ..World::STEADY
    };
    for times in [1.0 / 3.0, 1.0, 2.0] {
        let (planted, learned) = (times * World::STEADY.turning_mm, learned_mm(faults(times)));
        let allowed = (planted / 1.5)..(planted * 1.5);
        assert!(allowed.contains(&learned), "{planted} {learned}");
    }
}
