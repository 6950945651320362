//! The bow comes first where it is far off, and only when the archer lets it.

use quarterturn_geometry::{Angle, Millimetres, Offset};

use super::journal::Journal;
use super::planted::Planted;
use crate::{Advice, Event, Step, Verdict, World};

/// A common offset of a third of the tolerance, in all directions.
#[test]
fn a_bow_that_is_nearly_right_is_left_alone_for_the_first_dozen_bare_shots() {
    for seed in 0..10 {
        let mut journal = Journal::of(12);
        let mut archer = journal.archer(World { common_mm: 0.0, ..World::ORDINARY }, seed);
        let direction = Angle::from_degrees(seed as f64 * 36.0);
        archer.move_bow(Offset::toward(direction, Millimetres::new(8.0)));
        let advice = journal.follow(&mut archer, 4);
        assert!(!asks(&advice), "seed {seed}: {:?}", advice.bow);
    }
}

/// `ends` ends of straight shafts beside a bow that is 70 mm off.
fn ends_with_the_bow_off(journal: Journal, shafts: &[&str], ends: usize) -> Journal {
    let off = Planted { centre: Offset::new(70.0, 0.0), ..Planted::default() };
    (0..ends).fold(journal, |journal, _| journal.end(shafts.iter().map(|one| off.shot(one, 0.0))))
}

const THREE: [&str; 3] = ["1", "2", "3"];

fn asks(advice: &Advice) -> bool {
    advice.step == Step::MoveBow
}

#[test]
fn the_move_wanted_takes_the_common_offset_back() {
    let advice = ends_with_the_bow_off(Journal::of(3), &THREE, 3).advice();
    assert!(asks(&advice));
    assert!(advice.bow.offset.mean.x_mm > 50.0, "{:?}", advice.bow.offset.mean);
    assert!(advice.bow.wanted_shift.x_mm < -50.0, "{:?}", advice.bow.wanted_shift);
    assert!(advice.bow.gain() > 2.0 && advice.bow.shafts == 3, "{:?}", advice.bow);
}

#[test]
fn a_shaft_that_the_bow_alone_keeps_out_is_not_retired() {
    let advice = ends_with_the_bow_off(Journal::of(3), &THREE, 4).advice();
    assert!(asks(&advice));
    assert!(advice.shafts.iter().all(|one| matches!(one.verdict, Verdict::Open(_))));
}

/// Two shots of the reference may both have flown far.
#[test]
fn two_ends_are_too_few_to_speak_of_the_bow() {
    assert!(!asks(&ends_with_the_bow_off(Journal::of(3), &THREE, 2).advice()));
}

#[test]
fn an_archer_who_leaves_the_bow_is_not_asked_before_three_shafts_spoke_anew() {
    let asked = ends_with_the_bow_off(Journal::of(3), &THREE, 3);
    assert!(asks(&asked.advice()));
    let left = asked.then(Event::BowLeft);
    assert!(!asks(&left.advice()));
    assert!(!asks(&ends_with_the_bow_off(left.clone(), &THREE[..2], 3).advice()));
    assert!(asks(&ends_with_the_bow_off(left, &THREE, 1).advice()));
}
