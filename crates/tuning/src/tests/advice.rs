//! Advice says the same of the same evening, however it is told.

use quarterturn_geometry::Offset;

use super::journal::Journal;
use crate::tolerance::{ANOTHER_ORDER, SHIFT_LEFT_MM, assert_within};
use crate::{Advice, Event, Miss, Shot, World};

/// Five ends of an ordinary evening.
fn evening() -> Journal {
    let mut journal = Journal::of(6);
    let mut archer = journal.archer(World::ORDINARY, 11);
    journal.follow(&mut archer, 5);
    journal
}

fn edit(mut journal: Journal, edit: impl Fn(&mut Vec<Shot>)) -> Journal {
    for event in &mut journal.history.events {
        let Event::End(end) = event else { continue };
        edit(&mut end.shots);
    }
    journal
}

fn misses(advice: &Advice) -> Vec<Miss> {
    let positions = advice.shafts.iter().flat_map(|shaft| &shaft.positions).map(|at| at.miss);
    positions.chain([advice.bow.offset]).collect()
}

#[track_caller]
fn assert_same(one: &Advice, other: &Advice, allowed: f64) {
    for (one, other) in misses(one).iter().zip(misses(other)) {
        assert_within(one.mean.x_mm, other.mean.x_mm, allowed);
        assert_within(one.mean.y_mm, other.mean.y_mm, allowed);
    }
    let verdicts = |advice: &Advice| -> Vec<_> {
        advice.shafts.iter().map(|shaft| (shaft.verdict, shaft.index)).collect()
    };
    assert_eq!(verdicts(one), verdicts(other));
}

#[test]
fn asked_twice_it_is_the_same() {
    let journal = evening();
    assert_eq!(journal.advice(), journal.advice());
}

#[test]
fn the_order_of_the_shots_inside_an_end_does_not_matter() {
    let reversed = edit(evening(), |shots| shots.reverse());
    assert_same(&evening().advice(), &reversed.advice(), ANOTHER_ORDER);
}

#[test]
fn where_the_whole_sitting_was_aimed_does_not_matter() {
    let shifted = edit(evening(), |shots| {
        for hit in shots.iter_mut().filter_map(|shot| shot.hit.as_mut()) {
            hit.at = hit.at + Offset::new(60.0, -80.0);
        }
    });
    assert_same(&evening().advice(), &shifted.advice(), SHIFT_LEFT_MM);
}

#[test]
fn the_archer_is_reported_only_once_an_arrow_was_shot_again_at_one_index() {
    assert_eq!(Journal::of(3).advice().archer.spread, None);
    let spread = evening().advice().archer.spread.unwrap();
    assert!(spread.interval.lower < spread.per_axis.mm());
    assert!(spread.per_axis.mm() < spread.interval.upper);
    assert!(spread.degrees_of_freedom >= 8);
}
