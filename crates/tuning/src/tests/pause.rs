//! When it is enough for tonight.

use quarterturn_geometry::Offset;

use super::journal::{Journal, shot};
use crate::{Pause, Shot};

/// Eight ends of the reference and two straight shafts; each hit is `radius_mm(end)` off, this way and that, and the
/// whole end `aimed(end)`.
fn evening(
    ends: usize,
    radius_mm: impl Fn(usize) -> f64,
    aimed: impl Fn(usize) -> Offset,
) -> Journal {
    (0..ends).fold(Journal::of(4), |journal, end| {
        let hit = |place: usize, shaft: &str| -> Shot {
            let turn = 2.4 * (3 * end + place) as f64;
            let off = Offset::new(turn.cos(), turn.sin()) * radius_mm(end);
            shot(shaft, 0.0, aimed(end) + off)
        };
        let pair = if end % 2 == 0 { ["1", "2"] } else { ["3", "4"] };
        journal.end_of(vec![hit(0, "R"), hit(1, pair[0]), hit(2, pair[1])])
    })
}

fn still(_: usize) -> Offset {
    Offset::ZERO
}

fn pause(journal: &Journal) -> Option<Pause> {
    journal.advice().pause
}

#[test]
fn a_steady_evening_goes_on_until_its_shots_are_shot() {
    for ends in [0, 1, 7, 8, 12, 16] {
        assert_eq!(pause(&evening(ends, |_| 15.0, still)), None, "{ends} ends");
    }
    let full = evening(18, |_| 15.0, still);
    assert_eq!(pause(&full), Some(Pause::EnoughShots { bare_shots: 36 }));
    assert_eq!(pause(&full.evening("second").end([shot("1", 0.0, Offset::ZERO)])), None);
}

#[test]
fn an_archer_whose_last_dozen_spreads_much_wider_is_sent_home() {
    let tired = |end: usize| if end < 4 { 8.0 } else { 32.0 };
    let Some(Pause::Tiring { wider, first, last }) = pause(&evening(8, tired, still)) else {
        panic!("tired: {:?}", pause(&evening(8, tired, still)));
    };
    assert_eq!((first, last), (12, 12));
    assert!((1.3..=4.5).contains(&wider), "{wider}");
    assert_eq!(pause(&evening(7, tired, still)), None, "a dozen and a dozen are needed");
    let settling = |end: usize| if end < 4 { 32.0 } else { 8.0 };
    assert_eq!(pause(&evening(8, settling, still)), None, "who shoots better goes on");
}

#[test]
fn a_reference_that_goes_elsewhere_in_the_second_half_ends_the_evening() {
    let drift = Offset::new(0.0, -60.0);
    let drifts = |end: usize| if end < 4 { Offset::ZERO } else { drift };
    let Some(Pause::Drifting { moved, first, last }) = pause(&evening(8, |_| 15.0, drifts)) else {
        panic!("it drifts: {:?}", pause(&evening(8, |_| 15.0, drifts)));
    };
    assert_eq!((first, last), (4, 4));
    assert!((moved.y_mm - drift.y_mm).abs() < 20.0 && moved.x_mm.abs() < 20.0, "{moved:?}");
    assert_eq!(pause(&evening(7, |_| 15.0, drifts)), None, "four ends a half are needed");
}

#[test]
fn another_evening_starts_afresh() {
    let tired = |end: usize| if end < 4 { 8.0 } else { 32.0 };
    let next = evening(8, tired, still).evening("second");
    assert_eq!(pause(&next.end([shot("1", 0.0, Offset::ZERO)])), None);
}
