//! Shots and shafts that stand out.

use quarterturn_geometry::Offset;

use super::journal::{Journal, flagged, shot};
use crate::{BowPart, Flag, Shot, StandingOut, standing_out};

/// Ends of the reference and three shafts, all about the spot; `hit` says where the shots of an end go, shaft by shaft.
fn journal(ends: usize, hit: impl Fn(usize, usize, Offset) -> Offset) -> Journal {
    (0..ends).fold(Journal::of(3), |journal, end| {
        let place = |(place, shaft): (usize, &str)| -> Shot {
            let step = 7 * end + place;
            let turn = 2.4 * step as f64;
            let off = Offset::new(turn.cos(), turn.sin()) * (6.0 + (step % 5) as f64 * 3.0);
            shot(shaft, 0.0, hit(end, place, off))
        };
        journal.end_of(["R", "1", "2", "3"].into_iter().enumerate().map(place).collect())
    })
}

fn found(journal: &Journal) -> StandingOut {
    standing_out(&journal.history)
}

#[test]
fn a_steady_journal_has_nothing() {
    let steady = |_, _, off| off;
    for ends in 0..9 {
        assert_eq!(found(&journal(ends, steady)), StandingOut::default(), "{ends} ends");
    }
}

#[test]
fn a_far_shot_is_named_with_what_it_changes() {
    let far =
        |end, place, off| if (end, place) == (4, 2) { off + Offset::new(0.0, 150.0) } else { off };
    let journal = journal(8, far);
    let [shot] = &found(&journal).shots[..] else { panic!("{:?}", found(&journal)) };
    assert_eq!((shot.shaft.as_str(), shot.end), ("2", 5));
    assert!(shot.from_others.y_mm > 120.0 && shot.from_others.x_mm.abs() < 30.0, "{shot:?}");
    assert!(shot.spread_without.mm() < 0.7 * shot.spread.mm(), "{shot:?}");
    let spread = journal.advice().archer.spread.unwrap();
    assert_eq!((spread.per_axis, spread.shots), (shot.spread, 32));
}

/// The same shot left out already, or after a change of the bow without others to compare it with, is no matter.
#[test]
fn what_does_not_count_does_not_stand_out() {
    let far = || shot("2", 0.0, Offset::new(150.0, 0.0));
    let steady = journal(6, |_, _, off| off);
    assert_eq!(found(&steady.clone().end([flagged(far(), Flag::Wind)])), StandingOut::default());
    let moved = steady.clone().bow(BowPart::Rest).end([far()]);
    assert_eq!(found(&moved), StandingOut::default());
    assert_eq!(found(&steady.end([far()])).shots.len(), 1);
}

#[test]
fn a_wide_shaft_is_named() {
    let wide = |_, place, off| if place == 3 { off * 5.0 } else { off };
    let [shaft] = &found(&journal(8, wide)).shafts[..] else {
        panic!("{:?}", found(&journal(8, wide)));
    };
    assert_eq!((shaft.shaft.as_str(), shaft.shots), ("3", 8));
    assert!((4.0..6.5).contains(&shaft.times) && shaft.by_chance < 1e-3, "{shaft:?}");
}
