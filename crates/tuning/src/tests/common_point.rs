//! Shafts that are to match each other, wherever that is.

use quarterturn_geometry::{Index, Offset};

use super::journal::Journal;
use super::planted::Planted;
use crate::tolerance::{COMMON_POINT_MM, assert_within};
use crate::{Advice, Matching, MeasuredFrom, RetireReason, ShaftChange, Step, Verdict, World};

/// So far right of the reference the bow lets bare shafts land.
const BOW: Offset = Offset::new(60.0, 0.0);

fn set(shafts: usize) -> Journal {
    Journal::of(shafts).with(|setup| setup.matching = Matching::Set)
}

/// Four ends, in which the mark of each shaft stands at each of four hours.
fn all_round(shafts: &[Planted], journal: Journal) -> Journal {
    [0.0, 3.0, 6.0, 9.0].into_iter().fold(journal, |journal, hour| {
        let named = shafts.iter().zip(1..);
        journal.end(named.map(|(shaft, number): (_, u8)| shaft.shot(&number.to_string(), hour)))
    })
}

fn straight() -> Planted {
    Planted { centre: BOW, ..Planted::default() }
}

#[test]
fn a_bow_that_is_far_off_keeps_no_shaft_out_and_is_not_asked_for() {
    let shafts = [straight(); 4];
    let advice = all_round(&shafts, set(4)).advice();
    assert!(advice.shafts.iter().all(|one| one.verdict == Verdict::Keep), "{advice:?}");
    assert!(advice.shafts.iter().all(|one| one.miss.mean.length().mm() < COMMON_POINT_MM));
    assert!(matches!(advice.step, Step::Finished(_)));
    let to_the_reference = advice.bow.wanted_shift + BOW;
    assert_within(to_the_reference.length().mm(), 0.0, COMMON_POINT_MM);
    assert_eq!(advice.measured_from.at(), -advice.bow.wanted_shift);
    assert!(advice.bow.expected_within_now < 1.0 && advice.bow.expected_within_if_moved > 3.5);
    let same = all_round(&shafts, Journal::of(4)).advice();
    assert_eq!(same.step, Step::MoveBow);
    assert_eq!(same.measured_from, MeasuredFrom::Reference);
}

#[test]
fn a_shaft_that_the_others_cannot_join_is_retired_and_moves_the_point_by_little() {
    let mut shafts = [straight(); 5];
    shafts[4].centre = BOW + Offset::new(0.0, 90.0);
    let advice = all_round(&shafts, set(5)).advice();
    let verdicts: Vec<_> = advice.shafts.iter().map(|one| one.verdict).collect();
    assert_eq!(verdicts[..4], [Verdict::Keep; 4]);
    assert_eq!(verdicts[4], Verdict::Retire(RetireReason::CentreOff));
    assert_within((advice.measured_from.at() - BOW).length().mm(), 0.0, COMMON_POINT_MM);
}

/// A shaft with a large circle goes to where the straight ones are.
#[test]
fn a_crooked_shaft_is_turned_to_where_the_others_land() {
    let turning = Offset::new(0.0, 35.0);
    let mut shafts = [straight(); 4];
    shafts[0] = Planted { centre: BOW - turning, turning, ..Planted::default() };
    let advice = all_round(&shafts, all_round(&shafts, set(4))).advice();
    let crooked = &advice.shafts[0];
    let off_deg = crooked.index.turn_to(Index::TWELVE).degrees().abs();
    assert!(off_deg <= 30.0, "{}", crooked.index);
    assert!(crooked.within > 0.8, "{}", crooked.within);
}

#[test]
fn what_is_fletched_holds_the_point() {
    let mut shafts = [straight(); 6];
    shafts[3..].fill(Planted { centre: BOW + Offset::new(0.0, 50.0), ..Planted::default() });
    let journal = all_round(&shafts, set(6));
    let low = ["1", "2", "3"]
        .iter()
        .fold(journal.clone(), |all, one| all.shaft(one, ShaftChange::Fletched));
    let held = low.shaft("4", ShaftChange::SetAside).shaft("5", ShaftChange::SetAside);
    let low_mm = height_mm(&held.advice());
    let high =
        ["4", "5", "6"].iter().fold(journal, |all, one| all.shaft(one, ShaftChange::Fletched));
    let held = high.shaft("1", ShaftChange::SetAside).shaft("2", ShaftChange::SetAside);
    let high_mm = height_mm(&held.advice());
    assert!(low_mm < 20.0 && high_mm > low_mm + 10.0, "{low_mm} {high_mm}");
}

fn height_mm(advice: &Advice) -> f64 {
    advice.measured_from.at().y_mm
}

/// A single shaft is always where its set is.
#[test]
fn a_shaft_alone_matches_itself_and_is_kept_only_after_enough_shots() {
    let far = Planted { centre: Offset::new(0.0, 200.0), ..Planted::default() };
    let hours = [0.0, 6.0, 3.0, 9.0];
    for shots in 0..=4 {
        let seen = hours[..shots].iter().fold(set(1), |all, &hour| all.end([far.shot("1", hour)]));
        let report = seen.report("1");
        assert!((0.9..=1.0).contains(&report.within), "{}", report.within);
        assert_eq!(report.verdict == Verdict::Keep, shots == 4, "{shots} shots: {report:?}");
    }
}

/// The middle one of several numbers.
fn median(mut of: Vec<f64>) -> f64 {
    of.sort_by(f64::total_cmp);
    of[of.len() / 2]
}

/// Whole tunings of invented dozens whose bow is 60 mm off.
#[test]
fn followed_to_its_end_most_shafts_are_kept_without_a_move_and_land_together() {
    let far_off = World { common_mm: 0.0, bow_off_mm: 60.0, ..World::ORDINARY };
    let (mut kept, mut astray) = (0, 0);
    for seed in 0..6 {
        let mut journal = set(12);
        let mut archer = journal.archer(far_off, seed);
        let advice = journal.follow(&mut archer, 60);
        assert!(matches!(advice.step, Step::Finished(_)), "{:?}", advice.step);
        let keeps = advice.shafts.iter().filter(|one| one.verdict == Verdict::Keep);
        let lands: Vec<_> =
            keeps.map(|one| archer.true_miss(&one.shaft, one.index).unwrap()).collect();
        let middle = [|at: &Offset| at.x_mm, |at: &Offset| at.y_mm]
            .map(|side| median(lands.iter().map(side).collect()));
        let far =
            |at: &&Offset| (**at - Offset::new(middle[0], middle[1])).length().mm() > 1.25 * 25.0;
        kept += lands.len();
        astray += lands.iter().filter(far).count();
    }
    assert!(kept >= 54, "{kept} of 72 kept");
    assert!(10 * astray <= kept, "{astray} of {kept} astray");
}
