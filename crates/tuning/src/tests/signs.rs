//! Which way each part of a miss goes when the mark is turned.

use quarterturn_geometry::{Index, Offset};

use super::journal::{Journal, leaning, shot};
use crate::design::{self, bare_hit, bare_lean};
use crate::layout::{Layout, shaft};
use crate::observation::Observations;
use crate::tolerance::{ROUNDING, assert_within};
use crate::{Scales, ShaftReport};

/// A millimetre of `part` toward 12 o'clock and nothing else.
fn planted(layout: &Layout, part: usize) -> impl Fn(usize) -> f64 + Copy {
    let place = layout.life(0) + part + 1;
    move |at| if at == place { 1.0 } else { 0.0 }
}

fn layout() -> Layout {
    Layout::of(&Observations::of(&Journal::of(1).history))
}

/// Where a millimetre of `part` toward 12 o'clock lands with the mark at `hour`.
fn lands(part: usize, hour: f64) -> (f64, f64) {
    let layout = layout();
    let hit = bare_hit(&layout, 0, 0, Index::from_hour(hour).angle().radians());
    let at = design::value(&hit, planted(&layout, part));
    (at.x, at.y)
}

const TO_12: (f64, f64) = (0.0, 1.0);
const TO_3: (f64, f64) = (1.0, 0.0);
const TO_6: (f64, f64) = (0.0, -1.0);
const TO_9: (f64, f64) = (-1.0, 0.0);

#[track_caller]
fn assert_lands(part: usize, by_hour: [(f64, (f64, f64)); 4]) {
    for (hour, (x, y)) in by_hour {
        let (at_x, at_y) = lands(part, hour);
        assert_within(at_x, x, ROUNDING);
        assert_within(at_y, y, ROUNDING);
    }
}

#[test]
fn a_centre_stays_where_it_is() {
    assert_lands(shaft::CENTRE, [(12.0, TO_12), (3.0, TO_12), (6.0, TO_12), (9.0, TO_12)]);
}

#[test]
fn what_turns_once_goes_round_with_the_mark() {
    assert_lands(shaft::TURNING, [(12.0, TO_12), (3.0, TO_3), (6.0, TO_6), (9.0, TO_9)]);
}

#[test]
fn what_turns_against_the_mark_goes_the_other_way() {
    assert_lands(shaft::TURNING_AGAINST, [(12.0, TO_12), (3.0, TO_9), (6.0, TO_6), (9.0, TO_3)]);
}

#[test]
fn for_a_stiff_side_a_half_turn_changes_nothing_and_a_quarter_turn_reverses() {
    assert_lands(shaft::STIFF, [(12.0, TO_12), (6.0, TO_12), (3.0, TO_6), (9.0, TO_6)]);
    assert_lands(shaft::STIFF_AGAINST, [(12.0, TO_12), (6.0, TO_12), (3.0, TO_6), (9.0, TO_6)]);
}

#[test]
fn for_a_stiff_side_an_eighth_turn_goes_a_quarter_with_the_mark_or_against_it() {
    assert_lands(shaft::STIFF, [(1.5, TO_3), (4.5, TO_9), (7.5, TO_3), (10.5, TO_9)]);
    assert_lands(shaft::STIFF_AGAINST, [(1.5, TO_9), (4.5, TO_3), (7.5, TO_9), (10.5, TO_3)]);
}

#[test]
fn the_lean_of_a_part_turns_with_it_and_points_away_from_the_miss() {
    let layout = layout();
    let slope = Scales::at(Journal::of(1).history.setup.distance).lean_per_miss_deg_per_mm;
    assert!(slope < 0.0);
    for part in [shaft::CENTRE, shaft::TURNING, shaft::STIFF] {
        for hour in [0.0, 1.5, 4.0, 9.0] {
            let mark_rad = Index::from_hour(hour).angle().radians();
            let lean = bare_lean(&layout, 0, 0, mark_rad, slope);
            let lean = design::value(&lean, planted(&layout, part));
            let (x, y) = lands(part, hour);
            assert_within(lean.x, slope * x, ROUNDING);
            assert_within(lean.y, slope * y, ROUNDING);
        }
    }
}

fn expected_at(report: &ShaftReport, hour: f64) -> Offset {
    let index = Index::from_hour(hour);
    report.positions.iter().find(|at| at.index == index).unwrap().miss.mean
}

#[test]
fn a_shaft_high_at_12_and_low_at_6_is_expected_right_at_3_and_left_at_9() {
    let up = Offset::new(0.0, 30.0);
    let journal = (0..6).fold(Journal::of(1), |journal, _| {
        journal.end([shot("1", 12.0, up)]).end([shot("1", 6.0, -up)])
    });
    let report = journal.report("1");
    let (right, left) = (expected_at(&report, 3.0), expected_at(&report, 9.0));
    assert!(right.x_mm > 15.0 && right.y_mm.abs() < 5.0, "{right:?}");
    assert!(left.x_mm < -15.0 && left.y_mm.abs() < 5.0, "{left:?}");
}

#[test]
fn a_tail_that_leans_left_speaks_for_a_hit_to_the_right() {
    let leaning_by = |x_deg| {
        let straight = (0..4).map(|_| leaning(shot("2", 0.0, Offset::ZERO), 0.0, 0.0));
        let journal = straight.fold(Journal::of(2), |journal, straight| journal.end([straight]));
        let one = leaning(shot("1", 0.0, Offset::ZERO), x_deg, 0.0);
        expected_at(&journal.end([one]).report("1"), 0.0).x_mm
    };
    assert!(leaning_by(-2.0) > 2.0);
    assert!(leaning_by(2.0) < -2.0);
}
