//! What one doubtful shot changes.

use quarterturn_geometry::Offset;

use super::journal::{Journal, flagged, shot};
use super::planted::Planted;
use crate::{Doubt, Flag, Policy, Verdict, Without, doubts};

fn of(journal: &Journal) -> Vec<Doubt> {
    doubts(&journal.history, &Policy::default())
}

/// Three straight shafts, shot so often that shaft 2 and 3 are kept beyond doubt.
fn straight(ends: usize) -> Journal {
    let straight = Planted::default();
    (0..ends).fold(Journal::of(3), |journal, _| {
        journal.end(["2", "3"].map(|shaft| straight.shot(shaft, 0.0)))
    })
}

#[test]
fn a_journal_without_a_doubtful_shot_has_no_doubt() {
    assert_eq!(of(&Journal::of(3)), []);
    assert_eq!(of(&straight(8)), []);
}

/// Shaft 1 straight in so many ends, the last of them read doubtfully.
fn doubtful_at_last(count: usize) -> Journal {
    let one = || Planted::default().shot("1", 0.0);
    let before = (1..count).fold(straight(10), |journal, _| journal.end([one()]));
    before.end([flagged(one(), Flag::Doubtful)])
}

#[test]
fn a_keep_that_hangs_on_a_doubtful_shot_says_so() {
    let keeps = |count: &usize| doubtful_at_last(*count).report("1").verdict == Verdict::Keep;
    let fewest = (1..12).find(keeps).unwrap();
    let [Doubt { shaft, end, miss, without }] = &of(&doubtful_at_last(fewest))[..] else {
        panic!("one doubt: {:?}", of(&doubtful_at_last(fewest)));
    };
    assert_eq!((shaft.as_str(), *end, *miss), ("1", 10 + fewest, Offset::ZERO));
    assert!(matches!(without, Without::Verdict(Verdict::Open(_))), "{without:?}");
    assert_eq!(of(&doubtful_at_last(fewest + 4)), [], "more shots leave no doubt");
}

#[test]
fn the_least_likely_shot_is_doubted_though_nobody_called_it_doubtful() {
    let one = || Planted::default().shot("1", 0.0);
    let before = (0..2).fold(straight(10), |journal, _| journal.end([one()]));
    let far = |tens: u8| Offset::new(10.0, 6.0) * f64::from(tens);
    let spoilt = |tens: &u8| before.clone().end([shot("1", 0.0, far(*tens))]);
    let opens = |tens: &u8| spoilt(tens).report("1").verdict != Verdict::Keep;
    let nearest = (1..12).find(opens).unwrap();
    let [Doubt { shaft, end, miss, without }] = &of(&spoilt(&nearest))[..] else {
        panic!("{nearest}: {:?} {:?}", of(&spoilt(&nearest)), spoilt(&nearest).report("1").verdict);
    };
    assert_eq!((shaft.as_str(), *end, *miss), ("1", 13, far(nearest)));
    assert_eq!(*without, Without::Verdict(Verdict::Keep));
}
