//! What is shot next: in which order, how much of it, and when nothing is.

use std::collections::BTreeSet;

use quarterturn_geometry::Offset;

use super::journal::{Journal, name, shot};
use crate::{
    Advice, Aim, Ending, Event, OpenReason, PlannedShot, Purpose, RetireReason, ShaftChange,
    ShaftState, Step, Verdict, World,
};

fn planned(advice: &Advice) -> &[PlannedShot] {
    let Step::Shoot(planned) = &advice.step else { panic!("nothing to shoot: {:?}", advice.step) };
    planned
}

/// References first, no more arrows than the archer has, every shaft once, open and in use.
#[track_caller]
fn assert_can_be_shot(journal: &Journal, advice: &Advice) {
    let planned = planned(advice);
    assert!(planned.is_sorted_by_key(|shot| shot.purpose != Purpose::Reference));
    assert!(planned.len() <= journal.history.setup.arrows_per_end);
    let names: BTreeSet<_> = planned.iter().map(|shot| &shot.shaft).collect();
    assert_eq!(names.len(), planned.len());
    for shot in planned {
        let Purpose::Bare { from, .. } = shot.purpose else { continue };
        let report = advice.shafts.iter().find(|one| one.shaft == shot.shaft).unwrap();
        assert_eq!((report.state, report.index_now), (ShaftState::InUse, from));
        assert!(matches!(report.verdict, Verdict::Open(_)));
    }
}

#[test]
fn with_nothing_shot_every_shaft_is_open_and_gets_a_first_look() {
    let journal = Journal::of(12);
    let advice = journal.advice();
    assert!(advice.shafts.iter().all(|one| one.verdict == Verdict::Open(OpenReason::NotShot)));
    assert_can_be_shot(&journal, &advice);
    let first_look =
        |shot: &PlannedShot| matches!(shot.purpose, Purpose::Bare { aim: Aim::FirstLook, .. });
    assert_eq!(planned(&advice).len(), 4);
    assert_eq!(planned(&advice)[0].purpose, Purpose::Reference);
    assert!(planned(&advice)[1..].iter().all(first_look));
}

#[test]
fn every_end_of_a_tuning_can_be_shot_as_planned() {
    for (seed, arrows) in [(1, 3), (2, 4), (3, 6)] {
        let mut journal = Journal::of(7).with(|setup| setup.arrows_per_end = arrows);
        let mut archer = journal.archer(World::ORDINARY, seed);
        for _ in 0..8 {
            let advice = journal.advice();
            if !matches!(advice.step, Step::Shoot(_)) {
                break;
            }
            assert_can_be_shot(&journal, &advice);
            let end = archer.shoot(planned(&advice), "first");
            journal.history.events.push(Event::End(end));
        }
        assert!(journal.history.events.len() > 3);
    }
}

#[test]
fn a_shaft_that_is_lost_broken_set_aside_or_fletched_is_never_planned() {
    use ShaftChange::{Broken, Fletched, Lost, SetAside};
    let gone = [("1", Lost), ("2", Broken), ("3", SetAside), ("4", Fletched)];
    let journal =
        gone.into_iter().fold(Journal::of(6), |all, (shaft, what)| all.shaft(shaft, what));
    let advice = journal.advice();
    let bare: BTreeSet<_> = planned(&advice)[1..].iter().map(|shot| shot.shaft.as_str()).collect();
    assert_eq!(bare, BTreeSet::from(["5", "6"]));
    let verdicts: Vec<_> = advice.shafts[..4].iter().map(|one| one.verdict).collect();
    let retired = [RetireReason::Lost, RetireReason::Broken, RetireReason::SetAside];
    assert_eq!(verdicts[..3], retired.map(Verdict::Retire));
    assert_eq!(verdicts[3], Verdict::Keep);
}

#[test]
fn a_reference_that_is_lost_makes_room_for_the_next() {
    let journal = Journal::of(3)
        .with(|setup| setup.references = ["R", "S"].map(name).to_vec())
        .shaft("R", ShaftChange::Lost);
    assert_eq!(planned(&journal.advice())[0].shaft.as_str(), "S");
}

#[test]
fn two_references_take_turns() {
    let journal = Journal::of(9).with(|setup| setup.references = ["R", "S"].map(name).to_vec());
    let seen = journal.end([shot("1", 0.0, Offset::ZERO)]);
    assert_eq!(planned(&seen.advice())[0].shaft.as_str(), "S");
    let both = seen.end_of(vec![shot("S", 0.0, Offset::ZERO), shot("2", 0.0, Offset::ZERO)]);
    assert_eq!(planned(&both.advice())[0].shaft.as_str(), "R");
}

#[test]
fn without_a_reference_nothing_can_be_measured() {
    let shot = shot("1", 0.0, Offset::new(20.0, 0.0));
    let advice = Journal::of(2).end([shot]).shaft("R", ShaftChange::Broken).advice();
    assert_eq!(advice.step, Step::Finished(Ending::NoReference));
    assert!(advice.shafts.iter().all(|one| one.verdict == Verdict::Open(OpenReason::NoReference)));
}

#[test]
fn without_a_shaft_there_is_nothing_to_do() {
    let journal = Journal::of(2).shaft("1", ShaftChange::SetAside).shaft("2", ShaftChange::Lost);
    assert_eq!(journal.advice().step, Step::Finished(Ending::NoShafts));
}

#[test]
fn a_finished_tuning_has_no_shaft_that_asks_for_more_shots() {
    let mut journal = Journal::of(4);
    let steady = World { spread_mm: [6.0, 6.0], loose_share: 0.0, ..World::ORDINARY };
    let mut archer = journal.archer(steady, 5);
    let advice = journal.follow(&mut archer, 40);
    assert!(matches!(advice.step, Step::Finished(_)), "{:?}", advice.step);
    let asks = |verdict| matches!(verdict, Verdict::Open(OpenReason::MoreShots(_)));
    assert!(!advice.shafts.iter().any(|one| asks(one.verdict)));
}
