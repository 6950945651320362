//! A bow that is farther off than any should be.

use quarterturn_geometry::Offset;

use super::journal::Journal;
use super::planted::Planted;
use crate::tolerance::{COMMON_POINT_MM, assert_within};
use crate::{BowPart, Step};

const BUTT_AWAY: Offset = Offset::new(2_900.0, -2_900.0);

/// Ends of three shafts that land `off` the reference, their tails straight.
fn ends(journal: Journal, off: Offset, ends: usize) -> Journal {
    let shaft = Planted { centre: off, ..Planted::default() };
    (0..ends).fold(journal, |all, _| {
        all.end(["1", "2", "3"].map(|name| {
            let mut shot = shaft.shot(name, 0.0);
            shot.hit.as_mut().unwrap().lean = None;
            shot
        }))
    })
}

#[track_caller]
fn assert_common(journal: &Journal, off: Offset) {
    let found = journal.advice().bow.offset.mean;
    assert_within((found - off).length().mm(), 0.0, COMMON_POINT_MM);
}

#[test]
fn shots_that_agree_are_not_taken_for_shots_that_flew_far() {
    for count in [1, 3, 6] {
        assert_common(&ends(Journal::of(3), BUTT_AWAY, count), BUTT_AWAY);
    }
    assert_eq!(ends(Journal::of(3), BUTT_AWAY, 3).advice().step, Step::MoveBow);
}

#[test]
fn a_move_that_nobody_measured_may_bring_them_all_the_way_back() {
    let moved = ends(Journal::of(3), BUTT_AWAY, 3).bow(BowPart::Rest);
    assert_common(&ends(moved, Offset::new(5.0, 5.0), 3), Offset::new(5.0, 5.0));
}

/// Two of them may both have flown far.
#[test]
fn two_shots_are_not_believed_to_be_so_far_off() {
    let shaft = Planted { centre: BUTT_AWAY, ..Planted::default() };
    let journal = Journal::of(3).end([shaft.shot("1", 0.0), shaft.shot("2", 0.0)]);
    assert!(journal.advice().bow.offset.mean.length() < BUTT_AWAY.length() * 0.5);
}
