//! What a change of the bow, of the sight or of a shaft leaves standing.

use quarterturn_geometry::{Index, Offset};

use super::journal::Journal;
use super::planted::Planted;
use crate::tolerance::{SHIFT_LEFT_MM, assert_within};
use crate::{BowPart, Event, OpenReason, ShaftChange, ShaftReport, Verdict};

/// Three shafts that land beside the reference, shot often enough to be kept; a fourth that was never shot.
fn kept() -> Journal {
    ends(Journal::of(4), 8)
}

fn ends(journal: Journal, ends: usize) -> Journal {
    let straight = Planted::default();
    (0..ends).fold(journal, |journal, _| {
        journal.end(["1", "2", "3"].map(|shaft| straight.shot(shaft, 0.0)))
    })
}

fn variance_mm2(report: &ShaftReport) -> f64 {
    report.miss.covariance_mm2.trace() / 2.0
}

#[test]
fn a_change_of_the_bow_reopens_what_was_kept_until_it_is_known_again() {
    assert_eq!(kept().report("1").verdict, Verdict::Keep);
    let changed = kept().bow(BowPart::Rest);
    assert!(matches!(changed.report("1").verdict, Verdict::Open(_)));
    assert!(variance_mm2(&changed.report("1")) > 4.0 * variance_mm2(&kept().report("1")));
    assert_eq!(ends(changed, 8).report("1").verdict, Verdict::Keep);
}

#[test]
fn shots_from_before_a_change_of_the_bow_still_tell_of_the_shafts() {
    let crooked = Planted { turning: Offset::new(0.0, 25.0), ..Planted::default() };
    let told = (0..6).fold(Journal::of(3), |journal, _| {
        let one = journal.end(["2", "3"].map(|shaft| Planted::default().shot(shaft, 0.0)));
        one.end([crooked.shot("1", 12.0)]).end([crooked.shot("1", 6.0)])
    });
    let apart_mm = |journal: &Journal| {
        let report = journal.report("1");
        let at = |hour| {
            let index = Index::from_hour(hour);
            report.positions.iter().find(|at| at.index == index).unwrap().miss.mean
        };
        (at(12.0) - at(6.0)).y_mm
    };
    let before_mm = apart_mm(&told);
    assert!(before_mm > 30.0, "{before_mm}");
    assert!(apart_mm(&told.bow(BowPart::Cam)) > 0.8 * before_mm);
}

#[test]
fn a_moved_sight_renews_the_aim_and_keeps_what_was_kept() {
    let moved = kept().bow(BowPart::Sight);
    let mut on = ends(moved, 1);
    let Some(Event::End(end)) = on.history.events.last_mut() else { unreachable!() };
    for hit in end.shots.iter_mut().filter_map(|shot| shot.hit.as_mut()) {
        hit.at = hit.at + Offset::new(100.0, 0.0);
    }
    let (before, after) = (kept().report("1"), on.report("1"));
    assert_eq!(after.verdict, Verdict::Keep);
    assert_within(after.miss.mean.x_mm, before.miss.mean.x_mm, SHIFT_LEFT_MM);
    assert!(variance_mm2(&after) < variance_mm2(&before));
}

#[test]
fn a_mended_shaft_starts_anew() {
    let mended = kept().shaft("1", ShaftChange::Repaired).report("1");
    assert_eq!(mended.verdict, Verdict::Open(OpenReason::NotShot));
    assert_eq!((mended.shots_total, mended.shots_here), (0, 0));
    let never_shot = kept().report("4");
    assert_within(variance_mm2(&mended) / variance_mm2(&never_shot), 1.0, 0.05);
}

#[test]
fn a_shaft_taken_up_again_is_what_it_was() {
    let back = kept().shaft("1", ShaftChange::SetAside).shaft("1", ShaftChange::Readmit);
    assert_eq!(back.report("1"), kept().report("1"));
}
