//! The rules of each way of going about a dozen.

use quarterturn_geometry::{Index, Millimetres, Offset};

use super::session::MOST_STEPS;
use super::{Figures, Mistake, Outcome, Protocol, Ruling};
use crate::tests::journal::Journal;
use crate::tolerance::{ROUNDING, assert_within};
use crate::{Setup, World};

/// Nobody shoots like this.
const STILL: World = World {
    spread_mm: [0.5, 0.5],
    drift_mm: 0.5,
    loose_share: 0.0,
    flyer_share: 0.0,
    seating_deg: 0.0,
    read_mm: 0.1,
    ..World::ORDINARY
};

fn dozen() -> Setup {
    Journal::of(12).history.setup
}

fn play(protocol: Protocol, world: World, seeds: std::ops::Range<u64>) -> Vec<Outcome> {
    seeds.map(|seed| protocol.play(&dozen(), world, seed)).collect()
}

#[test]
fn the_same_seed_plays_the_same() {
    for protocol in Protocol::ALL {
        let twice = [0, 0].map(|_| protocol.play(&dozen(), World::ORDINARY, 3));
        assert_eq!(twice[0], twice[1], "{protocol:?}");
        assert_ne!(twice[0], protocol.play(&dozen(), World::ORDINARY, 4), "{protocol:?}");
    }
}

#[test]
fn every_shaft_has_its_fate_and_every_shot_is_counted() {
    for protocol in Protocol::ALL {
        for one in play(protocol, World::ORDINARY, 0..3) {
            assert_eq!(one.shafts.len(), 12, "{protocol:?}");
            assert!(one.ends <= MOST_STEPS && one.bare_shots < one.shots, "{protocol:?}: {one:?}");
            assert!(one.shots - one.bare_shots <= one.ends, "{protocol:?}: {one:?}");
            assert_eq!(one.evenings, one.evenings.clamp(1, one.bare_shots.div_ceil(36)));
        }
    }
}

/// Eight positions three times each is 24 shots a shaft, and one of the reference to three of them.
#[test]
fn eight_positions_take_32_shots_a_shaft() {
    for one in play(Protocol::EightPositions, World::SHAKY, 0..3) {
        assert_eq!((one.shots, one.bare_shots, one.ends, one.turns), (384, 288, 96, 84));
        assert!(one.shafts.iter().all(|fate| fate.ruling != Ruling::Open));
    }
}

/// Two or three shots a quarter, four quarters at most; where nothing scatters it keeps just what a quarter brings in.
#[test]
fn the_habit_keeps_the_first_quarter_that_is_good_twice() {
    let setup = dozen();
    for (seed, one) in (0..).zip(play(Protocol::Habit, STILL, 0..5)) {
        assert!((24..=144).contains(&one.bare_shots) && one.shots - one.bare_shots == one.ends);
        let archer = crate::SimulatedArcher::new(&setup, STILL, seed);
        for fate in &one.shafts {
            let miss_mm = |quarter: f64| {
                let index = Index::from_hour(3.0 * quarter);
                archer.true_miss(&fate.shaft, index).unwrap().length().mm()
            };
            let nearest_mm = [0.0, 1.0, 2.0, 3.0].map(miss_mm).into_iter().fold(f64::MAX, f64::min);
            match fate.ruling {
                Ruling::Keep => assert!(fate.miss.length().mm() < 25.0 + 3.0),
                _ => assert!(nearest_mm > 25.0 - 3.0, "{nearest_mm}: {fate:?}"),
            }
        }
    }
}

#[test]
fn told_levels_and_a_steady_hand_settle_every_shaft_rightly() {
    for one in play(Protocol::ToldLevels, STILL, 0..5) {
        assert!(one.shafts.iter().all(|fate| fate.mistake.is_none()), "{one:?}");
        assert!(one.shafts.iter().all(|fate| fate.ruling != Ruling::Open), "{one:?}");
    }
}

#[test]
fn a_bow_60_mm_off_is_moved_and_then_the_shafts_are_settled() {
    for one in play(Protocol::Program, World::BOW_OFF, 0..3) {
        let asked = one.bow_asked.expect("the bow is asked for");
        assert!((asked.offset.length().mm() - 60.0).abs() < 1e-9);
        assert!(!asked.is_false(Millimetres::new(25.0)));
        assert!(one.shafts.iter().any(|fate| fate.ruling == Ruling::Keep), "{one:?}");
    }
    for protocol in [Protocol::Habit, Protocol::EightPositions, Protocol::ToldLevels] {
        assert!(play(protocol, World::BOW_OFF, 0..2).iter().all(|one| one.bow_asked.is_none()));
    }
}

/// Planted fates: of two keeps one is wrong, of two usable shafts one is lost, one of four is open.
#[test]
fn figures_count_what_they_say() {
    let planted = |ruling, usable, mistake| super::Fate {
        shaft: crate::tests::journal::name("1"),
        ruling,
        index: Index::TWELVE,
        miss: Offset::ZERO,
        groups: true,
        usable,
        mistake,
    };
    let shafts = vec![
        planted(Ruling::Keep, true, None),
        planted(Ruling::Keep, false, Some(Mistake::WrongKeep)),
        planted(Ruling::Retire, true, Some(Mistake::Lost)),
        planted(Ruling::Open, false, None),
    ];
    let one = Outcome { shots: 20, ends: 5, shafts, ..Outcome::default() };
    let figures = Figures::of(&[one.clone(), one], Millimetres::new(25.0));
    let value = |estimate: Option<quarterturn_statistics::Estimate>| estimate.unwrap().value;
    let Figures { shots_per_shaft, wrong, lost, open, bow, .. } = figures;
    for (estimate, planted) in
        [(shots_per_shaft, 5.0), (wrong, 0.5), (lost, 0.5), (open, 0.25), (bow, 0.0)]
    {
        assert_within(value(estimate), planted, ROUNDING);
    }
    assert_eq!((figures.covered, figures.bins.len(), figures.dozens), (None, 0, 2));
}

#[test]
fn from_twice_as_far_everything_flies_twice_as_far_off() {
    let near = dozen();
    let far = Setup { distance: near.distance * 2.0, ..near.clone() };
    let miss = |setup: &Setup| {
        let archer = crate::SimulatedArcher::new(setup, World::ORDINARY.at(setup.distance), 1);
        archer.true_miss(&setup.shafts[0].0, Index::from_hour(4.0)).unwrap()
    };
    let (once, twice) = (miss(&near), miss(&far));
    assert!((twice - once * 2.0).length().mm() < 1e-9, "{once:?}, {twice:?}");
}
