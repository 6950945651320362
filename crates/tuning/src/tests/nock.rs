//! A nock bears so many turns.

use quarterturn_geometry::{Index, Offset};

use super::journal::{Journal, shot};
use super::planted::Planted;
use crate::{Policy, Purpose, ShaftChange, ShaftReport, Step, advise};

/// The report of shaft 1 by an archer whose nocks bear `nock_turns` turns.
fn report(journal: &Journal, nock_turns: usize) -> ShaftReport {
    let policy = Policy { nock_turns, ..Policy::default() };
    advise(&journal.history, &policy).shafts.swap_remove(0)
}

/// Shaft 1 turned five times.
fn turned() -> Journal {
    let hours = [0.0, 4.0, 8.0, 0.0, 4.0, 8.0];
    hours
        .iter()
        .fold(Journal::of(2), |all, &hour| all.end([shot("1", hour, Offset::new(30.0, 0.0))]))
}

#[test]
fn the_turns_that_are_left_are_told_until_the_nock_is_renewed() {
    let told = |journal: &Journal, bears| {
        let report = report(journal, bears);
        (report.turns, report.turns_left, report.nock_is_worn())
    };
    assert_eq!(told(&turned(), 8), (5, 3, false));
    assert_eq!(told(&turned(), 5), (5, 0, true));
    assert_eq!(told(&turned(), 3), (5, 0, true));
    assert_eq!(told(&turned().shaft("1", ShaftChange::Repaired), 5), (0, 5, false));
}

#[test]
fn what_is_given_up_needs_no_new_nock() {
    assert!(!report(&turned().shaft("1", ShaftChange::SetAside), 3).nock_is_worn());
}

/// What turns is so small that the next hour is as good as this one.
#[test]
fn a_worn_nock_stays_where_another_index_is_hardly_better() {
    let shaft = Planted {
        centre: Offset::new(0.0, 16.0),
        turning: Offset::new(0.0, 3.0),
        ..Planted::default()
    };
    let hours = [0.0, 3.0, 6.0, 9.0, 3.0];
    let journal = hours.iter().fold(Journal::of(1), |all, &hour| all.end([shaft.shot("1", hour)]));
    let three = Index::from_hour(3.0);
    let sound = report(&journal, 50);
    assert_ne!(sound.index, three, "{:?}", sound.positions);
    let worn = report(&journal, 4);
    assert_eq!(worn.index, three, "{:?}", worn.positions);
    let policy = Policy { nock_turns: 4, ..Policy::default() };
    if let Step::Shoot(shots) = advise(&journal.history, &policy).step {
        let stays = |purpose| matches!(purpose, Purpose::Bare { index, .. } if index == three);
        assert!(shots.iter().any(|shot| stays(shot.purpose)), "{shots:?}");
    }
}
