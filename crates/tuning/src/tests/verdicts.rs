//! When a shaft is kept, when it is retired and for what reason.

use quarterturn_geometry::{Index, Millimetres, Offset};

use super::journal::{Journal, name, shot};
use super::planted::Planted;
use crate::{RetireReason, Verdict, World};

/// Both shafts at each of four hours in turn, `times` times, beside two that land where they should.
fn all_round(one: Planted, other: Planted, times: usize) -> Journal {
    let hours = [0.0, 3.0, 6.0, 9.0].into_iter().cycle().take(4 * times);
    let straight = Planted::default();
    hours.fold(Journal::of(4), |journal, hour| {
        journal
            .end([one.shot("1", hour), straight.shot("3", hour)])
            .end([other.shot("2", hour), straight.shot("4", hour)])
    })
}

#[test]
fn one_shot_of_each_keeps_none_and_retires_none() {
    for seed in 0..12 {
        let mut journal = Journal::of(6).with(|setup| setup.arrows_per_end = 7);
        let mut archer = journal.archer(World::ORDINARY, seed);
        let advice = journal.follow(&mut archer, 1);
        assert!(advice.shafts.iter().all(|one| one.shots_total == 1));
        assert!(advice.shafts.iter().all(|one| matches!(one.verdict, Verdict::Open(_))));
    }
}

#[test]
fn the_best_of_four_positions_shot_once_each_is_no_keep() {
    let hits = [(0.0, 34.0, 9.0), (3.0, -21.0, 30.0), (6.0, 1.0, -1.0), (9.0, 12.0, -36.0)];
    let journal = hits.into_iter().fold(Journal::of(1), |journal, (hour, x_mm, y_mm)| {
        journal.end([shot("1", hour, Offset::new(x_mm, y_mm))])
    });
    assert!(matches!(journal.report("1").verdict, Verdict::Open(_)));
}

#[test]
fn a_shaft_that_lands_beside_the_reference_again_and_again_is_kept() {
    let journal = all_round(Planted::default(), Planted::default(), 3);
    for report in journal.advice().shafts {
        assert_eq!(report.verdict, Verdict::Keep);
        assert!(report.within >= 0.9);
    }
}

#[test]
fn a_shaft_with_a_large_circle_is_kept_where_the_bow_makes_up_for_it() {
    let crooked = Planted {
        centre: Offset::new(0.0, -28.0),
        turning: Offset::new(0.0, 28.0),
        ..Planted::default()
    };
    let report = all_round(crooked, Planted::default(), 8).report("1");
    assert_eq!(report.verdict, Verdict::Keep);
    assert!(crooked.miss(report.index).length() < Millimetres::new(25.0));
    assert!(crooked.miss(Index::from_hour(6.0)).length() > Millimetres::new(50.0));
}

#[test]
fn a_shaft_whose_circle_is_too_big_is_retired_for_it() {
    let crooked = Planted { turning: Offset::new(40.0, 50.0), ..Planted::default() };
    let report = all_round(crooked, Planted::default(), 8).report("1");
    assert_eq!(report.verdict, Verdict::Retire(RetireReason::CircleTooBig));
}

#[test]
fn a_shaft_whose_centre_is_off_is_retired_for_it() {
    let off = Planted { centre: Offset::new(-70.0, 40.0), ..Planted::default() };
    let report = all_round(off, Planted::default(), 8).report("1");
    assert_eq!(report.verdict, Verdict::Retire(RetireReason::CentreOff));
}

#[test]
fn two_shots_retire_no_shaft_however_far_off() {
    let far = Planted { turning: Offset::new(0.0, 150.0), ..Planted::default() };
    let twice = all_round(Planted::default(), Planted::default(), 2)
        .with(|setup| setup.shafts.push((name("5"), Index::TWELVE)))
        .end([far.shot("5", 0.0)])
        .end([far.shot("5", 6.0)]);
    assert!(matches!(twice.report("5").verdict, Verdict::Open(_)));
}
