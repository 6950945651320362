//! Shots that are kept and counted but say nothing of their shaft.

use quarterturn_geometry::{Millimetres, Offset};

use super::journal::{Journal, flagged, shot};
use crate::{Call, End, Event, Flag, Miss, OpenReason, Shot, Verdict};

/// Two ends of four shafts, shaft 4 not shot yet, and `more` shots of it in the second.
fn evening(more: Option<Shot>) -> Journal {
    let at = |shaft, x_mm, y_mm| shot(shaft, 0.0, Offset::new(x_mm, y_mm));
    let second = [at("3", -15.0, 11.0), at("1", 9.0, -3.0)];
    Journal::of(4).end([at("1", 22.0, 5.0), at("2", 8.0, 30.0)]).end(second.into_iter().chain(more))
}

fn misses(journal: &Journal) -> Vec<Miss> {
    let advice = journal.advice();
    let positions = advice.shafts.iter().flat_map(|shaft| &shaft.positions);
    positions.map(|at| at.miss).chain([advice.bow.offset]).collect()
}

#[track_caller]
fn assert_left_out(more: Shot) {
    let journal = evening(Some(more));
    assert_eq!(misses(&journal), misses(&evening(None)));
    let report = journal.report("4");
    assert_eq!((report.shots_total, report.shots_left_out), (0, 1));
    assert_eq!((report.shots_here, report.verdict), (0, Verdict::Open(OpenReason::NotShot)));
}

fn wild() -> Shot {
    shot("4", 0.0, Offset::new(180.0, -240.0))
}

#[test]
fn a_shot_called_poor_is_left_out() {
    assert_left_out(Shot { call: Some(Call::Poor), ..wild() });
}

#[test]
fn a_shot_in_a_gust_with_contact_or_with_a_moved_nock_is_left_out() {
    for flag in [Flag::Wind, Flag::Contact, Flag::NockMoved] {
        assert_left_out(flagged(wild(), flag));
    }
}

#[test]
fn a_shot_called_good_and_a_plain_one_count_alike() {
    let good = Shot { call: Some(Call::Good), ..wild() };
    assert_eq!(misses(&evening(Some(good))), misses(&evening(Some(wild()))));
    assert_ne!(misses(&evening(Some(wild()))), misses(&evening(None)));
}

#[test]
fn a_doubtful_reading_counts_for_less_than_a_plain_one() {
    let there = |shot| evening(Some(shot)).report("4").positions[0].miss;
    let near = || shot("4", 0.0, Offset::new(30.0, 0.0));
    let (plain, doubtful) = (there(near()), there(flagged(near(), Flag::Doubtful)));
    assert!(doubtful.covariance_mm2.trace() > plain.covariance_mm2.trace());
    assert!(doubtful.mean.x_mm < plain.mean.x_mm);
}

#[test]
fn an_end_at_another_distance_is_never_pooled() {
    let shots = vec![shot("R", 0.0, Offset::ZERO), wild()];
    let distance = Some(Millimetres::from_metres(9.0));
    let end = End { shots, evening: "first".to_owned(), distance };
    let journal = evening(None).then(Event::End(end));
    assert_eq!(misses(&journal), misses(&evening(None)));
    assert_eq!(journal.report("4").shots_left_out, 1);
}
