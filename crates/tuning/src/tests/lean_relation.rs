//! The slope of leans on misses is learned, and its interval covers what was planted.

use quarterturn_geometry::Offset;

use super::journal::{Journal, leaning, shot};
use crate::tolerance::COVERAGE_OF_FEW;
use crate::{History, LeanRelation, Policy, World, advise, advise_with_leans};

fn lean_relation(history: &History) -> Option<LeanRelation> {
    advise_with_leans(history, &Policy::default()).1
}

/// Leans that go in a straight line with the miss.
fn straight(lean_deg_per_mm: f64) -> World {
    World { lean_deg_per_mm, lean_bends_at_mm: 1e6, ..World::ORDINARY }
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
    let hour = |end| (end % 12) as f64;
    let mut covered = 0_u8;
    for (seed, slope) in (0..30).zip(planted.into_iter().cycle()) {
        let mut journal = Journal::of(12);
        let mut archer = journal.archer(straight(slope), seed);
        journal.shoot_in_turn(&mut archer, 0..4, hour);
        let early = lean_relation(&journal.history).unwrap();
        journal.shoot_in_turn(&mut archer, 4..16, hour);
        let late = lean_relation(&journal.history).unwrap();
        assert!(width(late) < width(early), "seed {seed}: {early:?}, {late:?}");
        assert_eq!([early.shots, late.shots], [12, 48]);
        covered += u8::from((late.interval.lower..=late.interval.upper).contains(&slope));
    }
    let share = f64::from(covered) / 30.0;
    assert!(COVERAGE_OF_FEW.contains(&share), "{share}");
}
