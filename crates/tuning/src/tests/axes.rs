//! An archer who spreads or aims otherwise up and down than to the sides is learned to.

use quarterturn_geometry::{Index, Offset};

use super::journal::{Journal, name, shot};
use crate::learn::learn;
use crate::observation::Observations;
use crate::{Aim, Event, PlannedShot, Purpose, Scales, World};

fn learned(journal: &Journal) -> Scales {
    let seen = Observations::of(&journal.history);
    learn(&seen, &Scales::at(journal.history.setup.distance)).scales
}

/// Forty ends of a reference and three shafts, each at its own hour.
fn shot_by(world: World, seed: u64) -> Journal {
    let mut journal = Journal::of(3);
    let mut archer = journal.archer(world, seed);
    for end in 0..40 {
        let bare = ["1", "2", "3"].map(|shaft| {
            let index = Index::from_hour(f64::from(end));
            let purpose = Purpose::Bare { index, from: index, aim: Aim::Try };
            PlannedShot { shaft: name(shaft), purpose }
        });
        let reference = PlannedShot { shaft: name("R"), purpose: Purpose::Reference };
        let planned: Vec<_> = std::iter::once(reference).chain(bare).collect();
        journal.history.events.push(Event::End(archer.shoot(&planned, "first")));
    }
    journal
}

/// The ratio of two standard deviations with 140 degrees of freedom each lies within a quarter of the truth in 99 of 100
/// cases, and the prior draws it in by a tenth.
#[test]
fn the_taller_spread_is_found() {
    for (planted, seed) in [(0.5, 1), (1.0, 2), (2.0, 3)] {
        let world =
            World { taller: planted, loose_share: 0.0, flyer_share: 0.0, ..World::ORDINARY };
        let taller = learned(&shot_by(world, seed)).taller;
        assert!((taller / planted).ln().abs() < 0.35, "{planted} was learned as {taller}");
    }
}

#[test]
fn the_aim_is_learned_for_each_axis() {
    let mut journal = Journal::of(1);
    for end in 0..30 {
        // Every other end 40 mm higher and every end at the same place to the sides.
        let up_mm = if end % 2 == 0 { 20.0 } else { -20.0 };
        let scatter_mm = f64::from(end % 3 - 1) * 5.0;
        let at = Offset::new(scatter_mm, up_mm);
        let bare = Offset::new(-scatter_mm, up_mm + scatter_mm);
        journal = journal.end_of(vec![shot("R", 0.0, at), shot("1", 0.0, bare)]);
    }
    let [to_the_sides_mm, up_and_down_mm] = learned(&journal).aim_mm;
    assert!((15.0..25.0).contains(&up_and_down_mm), "{up_and_down_mm}");
    assert!(to_the_sides_mm < 6.0, "{to_the_sides_mm}");
}
