//! What the flight model reads from a history.

use quarterturn_geometry::{Angle, Millimetres, Offset};

use super::journal::{Journal, flagged, leaning, name, shot};
use crate::observation::{Kind, Observation, Observations};
use crate::tolerance::{ROUNDING, assert_within};
use crate::{BowChange, BowPart, Event, Flag, MissingMass, ShaftChange, Shot, known_height};

fn seen(journal: &Journal) -> Observations {
    Observations::of(&journal.history)
}

fn at(hour: f64) -> Shot {
    shot("1", hour, Offset::new(7.0, -5.0))
}

fn moved(part: BowPart, moved_mm: Option<f64>) -> Event {
    Event::Bow(BowChange { part, moved: moved_mm.map(|mm| Offset::new(0.0, mm)) })
}

#[test]
fn a_shot_is_read_as_it_was_entered() {
    let mut one = leaning(at(3.0), -1.5, 2.5);
    let hit = one.hit.as_mut().unwrap();
    hit.read_sd = Some(Millimetres::new(2.0));
    hit.lean_sd = Some(Angle::from_degrees(0.5));
    let seen = seen(&Journal::of(1).end([one]));
    let Observation { life, hit_mm, lean_deg, read_mm, read_lean_deg, .. } = seen.shots[1].clone();
    assert_eq!((life, hit_mm.x, hit_mm.y, read_mm), (0, 7.0, -5.0, Some(2.0)));
    assert_within(seen.shots[1].mark_rad, std::f64::consts::FRAC_PI_2, ROUNDING);
    assert_within(lean_deg.unwrap().x, -1.5, ROUNDING);
    assert_within(lean_deg.unwrap().y, 2.5, ROUNDING);
    assert_within(read_lean_deg.unwrap(), 0.5, ROUNDING);
}

#[test]
fn a_lean_that_was_not_read_stays_unknown() {
    assert_eq!(seen(&Journal::of(1).end([at(0.0)])).shots[1].lean_deg, None);
}

#[test]
fn a_doubtful_reading_is_read_more_coarsely_than_a_plain_one() {
    let doubtful = flagged(shot("2", 0.0, Offset::ZERO), Flag::Doubtful);
    let seen = seen(&Journal::of(2).end([at(0.0), doubtful]));
    assert_eq!(seen.shots[1].coarser.to_bits(), 1.0_f64.to_bits());
    assert!(seen.shots[2].coarser > 1.0);
}

#[test]
fn the_known_height_is_taken_off_bare_shots_only() {
    let lacks = MissingMass { lighter_gr: 20.0, arrow_gr: 400.0, speed_m_s: 82.0 };
    let journal = Journal::of(1).with(|setup| setup.bare_lighter = Some(lacks)).end([at(0.0)]);
    let height_mm = known_height(&journal.history.setup).mm();
    let heights: Vec<_> = seen(&journal).shots.iter().map(|shot| shot.hit_mm.y).collect();
    assert_within(heights[0], 0.0, ROUNDING);
    assert_within(heights[1], -5.0 - height_mm, ROUNDING);
}

#[test]
fn another_evening_or_a_moved_sight_renews_the_aim_and_nothing_else() {
    let journal = Journal::of(1)
        .end([at(0.0)])
        .end([at(0.0)])
        .then(moved(BowPart::Sight, Some(3.0)))
        .end([at(0.0)])
        .evening("second")
        .end([at(0.0)]);
    let seen = seen(&journal);
    let sittings: Vec<_> = seen.shots.iter().map(|shot| shot.sitting).collect();
    assert_eq!(sittings, [0, 0, 0, 0, 1, 1, 2, 2]);
    assert_eq!(seen.sittings, 3);
    assert!(seen.bow_changes_mm.is_empty() && seen.shots.iter().all(|shot| shot.bow == 0));
}

#[test]
fn a_small_move_of_the_bow_forgets_less_than_a_large_or_unmeasured_one() {
    let journal = [Some(0.2), Some(50.0), None]
        .into_iter()
        .fold(Journal::of(1), |journal, mm| journal.then(moved(BowPart::Rest, mm)).end([at(0.0)]));
    let seen = seen(&journal);
    let [small, large, unmeasured] = seen.bow_changes_mm[..] else { panic!("three changes") };
    assert!(small < large);
    assert_eq!(large.to_bits(), unmeasured.to_bits());
    let bows: Vec<_> = seen.shots.iter().map(|shot| shot.bow).collect();
    assert_eq!(bows, [1, 1, 2, 2, 3, 3]);
}

#[test]
fn a_mended_shaft_begins_another_life_of_its_kind() {
    let journal = Journal::of(1).end([at(0.0)]).shaft("1", ShaftChange::Repaired).end([at(0.0)]);
    let seen = seen(&journal);
    let lives: Vec<_> = seen.shots.iter().map(|shot| shot.life).collect();
    assert_eq!(lives, [1, 0, 1, 2]);
    assert_eq!(seen.life_of(&name("1")), Some(2));
    assert_eq!(seen.lives[2].kind, Kind::Bare);
}

#[test]
fn the_shots_of_one_end_stay_together() {
    let journal = Journal::of(2).end([at(0.0)]).end([shot("2", 0.0, Offset::ZERO)]);
    let ends: Vec<_> = seen(&journal).shots.iter().map(|shot| shot.end).collect();
    assert_eq!(ends, [0, 0, 1, 1]);
}
