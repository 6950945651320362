//! Where every shaft stands after what happened to it.

use quarterturn_geometry::{Index, Millimetres, Offset, Positions};

use super::journal::{Journal, flagged, name, shot};
use crate::{Call, Event, Flag, Roster, ShaftChange, ShaftState, Shot, Standing};

fn standing(journal: &Journal, shaft: &str) -> Standing {
    Roster::of(&journal.history).find(&name(shaft)).unwrap().clone()
}

fn at(hour: f64) -> Shot {
    shot("1", hour, Offset::ZERO)
}

#[test]
fn a_shaft_begins_in_use_at_the_index_it_was_named_with() {
    let three = Index::from_hour(3.0);
    let journal = Journal::of(2).with(|setup| setup.shafts[0].1 = three);
    let first = standing(&journal, "1");
    assert_eq!((first.state, first.index_now), (ShaftState::InUse, three));
    assert_eq!((first.counted.len(), first.left_out), (0, 0));
    assert_eq!(Roster::of(&journal.history).find(&name("3")), None);
}

#[test]
fn a_mark_stands_where_the_shaft_was_last_shot_counted_or_not() {
    let poor = Shot { call: Some(Call::Poor), ..at(5.0) };
    let journal = Journal::of(1).end([at(2.0)]).end([poor]);
    let first = standing(&journal, "1");
    assert_eq!(first.index_now, Index::from_hour(5.0));
    assert_eq!((first.counted, first.left_out), (vec![Index::from_hour(2.0)], 1));
}

#[test]
fn shots_within_half_a_position_are_shots_at_it() {
    let journal =
        [2.0, 2.4, 2.6, 8.0].iter().fold(Journal::of(1), |all, &hour| all.end([at(hour)]));
    let first = standing(&journal, "1");
    assert_eq!(first.shots_at(Index::from_hour(2.0), Positions::HOURS), 2);
    assert_eq!(first.shots_at(Index::from_hour(2.0), Positions::new(4).unwrap()), 3);
}

#[test]
fn every_change_gives_its_state() {
    use ShaftChange::{
        Broken, Checked, Fletched, HardHit, Lost, NewNock, Readmit, Repaired, SetAside,
    };
    let states = [
        // These say something of a shaft that stays what it is.
        (Checked, ShaftState::Lost),
        (HardHit, ShaftState::Lost),
        (NewNock, ShaftState::Lost),
        (Lost, ShaftState::Lost),
        (Broken, ShaftState::Broken),
        (SetAside, ShaftState::SetAside),
        (Fletched, ShaftState::Fletched),
        (Readmit, ShaftState::InUse),
        (Repaired, ShaftState::InUse),
    ];
    for (change, state) in states {
        let journal =
            Journal::of(1).end([at(0.0)]).shaft("1", ShaftChange::Lost).shaft("1", change);
        assert_eq!(standing(&journal, "1").state, state, "{change:?}");
    }
}

#[test]
fn only_mending_forgets_the_shots() {
    let shot = Journal::of(1).end([at(0.0)]).shaft("1", ShaftChange::Lost);
    assert_eq!(standing(&shot.clone().shaft("1", ShaftChange::Readmit), "1").counted.len(), 1);
    assert_eq!(standing(&shot.shaft("1", ShaftChange::Repaired), "1").counted.len(), 0);
}

#[test]
fn a_shot_noted_lost_counts_and_one_noted_broken_does_not() {
    let lost = standing(&Journal::of(1).end([flagged(at(0.0), Flag::Lost)]), "1");
    assert_eq!((lost.state, lost.counted.len(), lost.left_out), (ShaftState::Lost, 1, 0));
    let broken = standing(&Journal::of(1).end([flagged(at(0.0), Flag::Broken)]), "1");
    assert_eq!((broken.state, broken.counted.len(), broken.left_out), (ShaftState::Broken, 0, 1));
}

#[test]
fn a_lost_arrow_that_was_not_found_has_no_hit_and_is_left_out() {
    let gone = Shot { hit: None, ..flagged(at(0.0), Flag::Lost) };
    let first = standing(&Journal::of(1).end([gone]), "1");
    assert_eq!((first.state, first.counted.len(), first.left_out), (ShaftState::Lost, 0, 1));
}

#[test]
fn shots_at_another_distance_are_left_out() {
    let mut journal = Journal::of(1).end([at(4.0)]);
    let Event::End(end) = &mut journal.history.events[0] else { unreachable!() };
    end.distance = Some(Millimetres::from_metres(9.0));
    let first = standing(&journal, "1");
    assert_eq!((first.counted.len(), first.left_out), (0, 1));
    assert_eq!(first.index_now, Index::from_hour(4.0));
}

#[test]
fn only_references_in_use_are_counted_on() {
    let journal = Journal::of(1)
        .with(|setup| setup.references = ["R", "S", "T"].map(name).to_vec())
        .shaft("R", ShaftChange::Lost)
        .shaft("T", ShaftChange::Broken);
    let roster = Roster::of(&journal.history);
    let in_use: Vec<_> = roster.references_in_use().map(|one| one.name.as_str()).collect();
    assert_eq!(in_use, ["S"]);
}

#[test]
fn a_turn_is_counted_when_the_mark_went_by_more_than_the_eye_can_tell() {
    let hours = [0.0, 3.0, 3.0, 3.001, 6.0, 0.0];
    let journal = hours.iter().fold(Journal::of(1), |all, &hour| all.end([at(hour)]));
    assert_eq!(standing(&journal, "1").turns, 3);
    assert_eq!(standing(&journal.clone().shaft("1", ShaftChange::NewNock), "1").turns, 0);
    let fletched = journal.clone().then(Event::Fletched(name("1"), Index::from_hour(8.0)));
    let fletched = standing(&fletched, "1");
    assert_eq!((fletched.turns, fletched.index_now), (4, Index::from_hour(8.0)));
    assert_eq!(fletched.state, ShaftState::Fletched);
    assert_eq!(standing(&journal.shaft("1", ShaftChange::Repaired), "1").turns, 0);
}
