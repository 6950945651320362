//! The slope of leans on misses is learned, and its interval covers what was planted.

use quarterturn_geometry::{Index, Offset};

use super::journal::{Journal, leaning, name, shot};
use crate::tolerance::COVERAGE_OF_FEW;
use crate::{
    Aim, Event, History, LeanRelation, PlannedShot, Policy, Purpose, SimulatedArcher, World,
    advise, advise_with_leans,
};

fn lean_relation(history: &History) -> Option<LeanRelation> {
    advise_with_leans(history, &Policy::default()).1
}

/// Leans that go in a straight line with the miss.
fn straight(lean_deg_per_mm: f64) -> World {
    World { lean_deg_per_mm, lean_bends_at_mm: 1e6, ..World::ORDINARY }
}

/// Ends of the reference and the next three shafts, their marks going round the clock.
fn shoot(journal: &mut Journal, archer: &mut SimulatedArcher, ends: std::ops::Range<usize>) {
    for end in ends {
        let index = Index::from_hour((end % 12) as f64);
        let bare = (0..3).map(|place| {
            let purpose = Purpose::Bare { index, from: index, aim: Aim::Try };
            PlannedShot { shaft: name(&((3 * end + place) % 12 + 1).to_string()), purpose }
        });
        let reference = PlannedShot { shaft: name("R"), purpose: Purpose::Reference };
        let planned: Vec<_> = std::iter::once(reference).chain(bare).collect();
        journal.history.events.push(Event::End(archer.shoot(&planned, "first")));
    }
}

#[test]
fn before_a_lean_was_read_nothing_is_known() {
    let journal = Journal::of(3);
    assert_eq!(lean_relation(&journal.history), None);
    let unread = journal.end([shot("1", 0.0, Offset::new(20.0, 5.0))]);
    assert_eq!(lean_relation(&unread.history), None);
    let read = unread.end([leaning(shot("1", 0.0, Offset::new(20.0, 5.0)), -2.0, -0.5)]);
    assert_eq!(lean_relation(&read.history).unwrap().shots, 1);
    let policy = Policy::default();
    assert_eq!(advise_with_leans(&read.history, &policy).0, advise(&read.history, &policy));
}

/// The planted slopes lie about what is expected as a journal's own do, a standard deviation to both sides.
#[test]
fn the_interval_covers_the_planted_slope_and_narrows() {
    let planted = [-0.075, -0.1, -0.125];
    let width = |of: LeanRelation| of.interval.upper - of.interval.lower;
    let mut covered = 0_u8;
    for (seed, slope) in (0..30).zip(planted.into_iter().cycle()) {
        let mut journal = Journal::of(12);
        let mut archer = journal.archer(straight(slope), seed);
        shoot(&mut journal, &mut archer, 0..4);
        let early = lean_relation(&journal.history).unwrap();
        shoot(&mut journal, &mut archer, 4..16);
        let late = lean_relation(&journal.history).unwrap();
        assert!(width(late) < width(early), "seed {seed}: {early:?}, {late:?}");
        assert_eq!([early.shots, late.shots], [12, 48]);
        covered += u8::from((late.interval.lower..=late.interval.upper).contains(&slope));
    }
    let share = f64::from(covered) / 30.0;
    assert!(COVERAGE_OF_FEW.contains(&share), "{share}");
}
