//! With next to no scatter, what was planted comes back.

use quarterturn_geometry::{Index, Positions};

use super::journal::{Journal, name};
use crate::tolerance::{NEARLY_TOLD_MM, assert_within};
use crate::{Advice, Aim, Event, PlannedShot, Purpose, SimulatedArcher, Verdict, World};

/// Nobody shoots like this.
const STILL: World = World {
    spread_mm: [0.5, 0.5],
    bare_wider: 1.0,
    torque_share: 0.0,
    drift_mm: 0.5,
    wander_mm: 0.5,
    third_mm: 0.0,
    seating_deg: 0.0,
    loose_share: 0.0,
    crooked_share: 0.0,
    flyer_share: 0.0,
    lean_discrepancy_deg: 0.0,
    lean_shot_deg: 0.1,
    lean_frame_deg: 0.1,
    read_mm: 0.1,
    ..World::ORDINARY
};

/// Three shafts shot eight times at each of five evenly spaced positions.
fn told(world: World, seed: u64) -> (Advice, SimulatedArcher) {
    let positions = Positions::new(5).unwrap();
    let mut journal = Journal::of(3).with(|setup| setup.positions = positions);
    let mut archer = journal.archer(world, seed);
    for index in (0..8).flat_map(|_| positions.iter()) {
        let bare = Purpose::Bare { index, from: index, aim: Aim::Try };
        let shots = [("R", Purpose::Reference), ("1", bare), ("2", bare), ("3", bare)];
        let planned = shots.map(|(shaft, purpose)| PlannedShot { shaft: name(shaft), purpose });
        let end = archer.shoot(&planned, "first");
        journal.history.events.push(Event::End(end));
    }
    (journal.advice(), archer)
}

#[test]
fn every_position_of_every_shaft_is_found() {
    for seed in 0..4 {
        let (advice, archer) = told(STILL, seed);
        for report in &advice.shafts {
            for at in &report.positions {
                let truth = archer.true_miss(&report.shaft, at.index).unwrap();
                let off = at.miss.mean - truth;
                assert_within(off.length().mm(), 0.0, NEARLY_TOLD_MM);
            }
        }
    }
}

#[test]
fn the_right_shafts_are_kept_and_the_right_ones_retired() {
    let crooked = World { crooked_share: 0.5, crooked_larger: 4.0, ..STILL };
    let (mut kept, mut retired) = (0, 0);
    for seed in 0..10 {
        let (advice, archer) = told(crooked, seed);
        for report in &advice.shafts {
            let miss_mm =
                |index: Index| archer.true_miss(&report.shaft, index).unwrap().length().mm();
            let nearest_mm =
                report.positions.iter().map(|at| miss_mm(at.index)).fold(f64::MAX, f64::min);
            match report.verdict {
                Verdict::Keep => assert!(miss_mm(report.index) < 25.0 + NEARLY_TOLD_MM),
                _ => assert!(nearest_mm > 25.0 - 2.0 * NEARLY_TOLD_MM, "{nearest_mm}: {report:?}"),
            }
            kept += usize::from(report.verdict == Verdict::Keep);
            retired += usize::from(matches!(report.verdict, Verdict::Retire(_)));
        }
    }
    assert!(kept >= 10 && retired >= 2, "{kept} kept, {retired} retired");
}
