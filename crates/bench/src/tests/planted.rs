//! Planted shafts: crooked ends, stiff sides, outliers, vanes; and what is refused.

use proptest::prelude::*;
use quarterturn_geometry::{Angle, Index, Millimetres};

use crate::tolerance::{ROUNDING, SMALL_ANGLE, assert_within};
use crate::{
    BenchError, Grains, SpineReading, SpineRound, Vanes, end_tilt, front_of_centre_percent,
    grains_per_pound, point_throw, standing_apart,
};

fn mm(mm: f64) -> Millimetres {
    Millimetres::new(mm)
}

/// 0.1 mm out of square on 8 mm tilt an insert by 0.7°, and a point of 40 mm stands half a millimetre off.
#[test]
fn a_crooked_end_throws_the_point() {
    let tilt = end_tilt(mm(0.1), mm(8.0)).unwrap();
    assert_within(tilt.degrees(), 0.716, 0.0005);
    assert_within(point_throw(tilt, mm(40.0)).mm(), 0.5, ROUNDING);
}

#[test]
fn small_angles_are_good_enough_to_five_degrees() {
    let exact = Angle::from_degrees(5.0);
    let tilt = end_tilt(mm(8.0 * exact.radians().tan()), mm(8.0)).unwrap();
    assert_within(tilt.radians() / exact.radians(), 1.0, SMALL_ANGLE);
    let throw = point_throw(exact, mm(40.0));
    assert_within(throw / mm(40.0 * exact.radians().sin()), 1.0, SMALL_ANGLE);
}

#[test]
fn what_cannot_be_is_refused() {
    let not = |value| Err(BenchError::NotAboveZero { value });
    assert_eq!(Grains::new(0.0), Err(BenchError::NotAboveZero { value: 0.0 }));
    assert!(Grains::new(f64::NAN).is_err() && Grains::new(f64::INFINITY).is_err());
    let arrow = Grains::new(400.0).unwrap();
    assert_eq!(grains_per_pound(arrow, -60.0), not(-60.0));
    assert_eq!(end_tilt(mm(0.1), mm(0.0)), Err(BenchError::NotAboveZero { value: 0.0 }));
    assert_eq!(front_of_centre_percent(mm(0.0), mm(1.0)), not(0.0));
    let off = front_of_centre_percent(mm(700.0), mm(701.0)).unwrap_err();
    assert_eq!(off.to_string(), "a balance point at 701 mm is not on a shaft of 700 mm");
    assert_within(front_of_centre_percent(mm(700.0), mm(280.0)).unwrap(), -10.0, ROUNDING * 10.0);
}

#[test]
fn the_parts_make_the_arrow() {
    let parts = [310.0, 15.0, 100.0, 25.0].map(|gr| Grains::new(gr).unwrap());
    assert_eq!(parts.into_iter().sum::<Grains>().to_string(), "450 gr");
}

fn readings(sags_mm: &[f64]) -> Vec<SpineReading> {
    let n = sags_mm.len() as f64;
    let reading = |(at, sag_mm): (usize, &f64)| SpineReading {
        side: Index::from_degrees(at as f64 * 360.0 / n),
        sag: mm(*sag_mm),
    };
    sags_mm.iter().enumerate().map(reading).collect()
}

#[test]
fn the_stiff_side_sags_least() {
    let round = SpineRound::of(&readings(&[10.2, 10.0, 10.2, 10.0 - 0.04])).unwrap();
    assert_eq!((round.n, round.stiff_side), (4, Some(Index::from_degrees(270.0))));
    assert_within(round.mean.mm(), 10.09, ROUNDING * 10.0);
    assert_within(round.spread.mm(), 0.24, ROUNDING * 10.0);
}

#[test]
fn few_or_equal_readings_name_no_side() {
    assert_eq!(SpineRound::of(&[]), None);
    assert_eq!(SpineRound::of(&readings(&[10.2, 10.0, 10.1])).unwrap().stiff_side, None);
    assert_eq!(SpineRound::of(&readings(&[10.0; 4])).unwrap().stiff_side, None);
    let side =
        |spread| SpineRound::of(&readings(&[10.0, 10.0 + spread, 10.0, 10.0])).unwrap().stiff_side;
    assert_eq!((side(0.05), side(0.07)), (None, Some(Index::from_degrees(0.0))));
}

/// By hand: the median is 312, the deviations 2 1 0 1 9, their median 1, and 3.5 · 1.4826 = 5.2.
#[test]
fn an_outlier_stands_apart_from_the_median() {
    let apart = standing_apart(&[310.0, 311.0, 312.0, 313.0, 321.0], 0.1).unwrap();
    assert_eq!(apart.iter().map(|one| (one.at, one.above_median)).collect::<Vec<_>>(), [(4, 9.0)]);
    let near = standing_apart(&[310.0, 311.0, 312.0, 313.0, 317.1], 0.1).unwrap();
    assert_eq!(near, []);
}

#[test]
fn what_the_tool_cannot_tell_does_not_stand_apart() {
    let same = [312.0, 312.0, 312.0, 312.0, 312.3];
    assert_eq!(standing_apart(&same, 0.1).unwrap(), []);
    assert_eq!(standing_apart(&same, 0.05).unwrap().len(), 1);
    assert_eq!(standing_apart(&[1.0, 1.0, 1.0, 9.0], 0.1).unwrap(), [], "of four");
    assert_eq!(standing_apart(&[], 0.1), Err(BenchError::NoMeasure));
    assert_eq!(standing_apart(&[f64::NAN], 0.1), Err(BenchError::NotOneEach));
    assert!(standing_apart(&same, 0.0).is_err());
}

/// The mark stands at 3 o'clock and the cock vane is to be up: three hours back from the mark.
#[test]
fn the_cock_vane_is_found_from_the_mark() {
    let from_mark = |vanes: Vanes, mark: f64, cock: f64| {
        let places = vanes.from_mark(Index::from_hour(mark), Index::from_hour(cock));
        places.map(Index::degrees).collect::<Vec<_>>()
    };
    assert_eq!(from_mark(Vanes::Three, 3.0, 12.0), [270.0, 30.0, 150.0]);
    assert_eq!(from_mark(Vanes::Four, 3.0, 12.0), [270.0, 0.0, 90.0, 180.0]);
    assert_eq!(from_mark(Vanes::Three, 12.0, 9.0), [270.0, 30.0, 150.0]);
    assert_eq!(from_mark(Vanes::Three, 4.0, 4.0), [0.0, 120.0, 240.0]);
}

proptest! {
    /// Whoever turns the fletched shaft until its mark is at its index sees the cock vane where it was wanted.
    #[test]
    fn on_the_string_the_cock_vane_stands_where_it_was_wanted(mark in 0.0..360.0, cock in 0.0..360.0) {
        for vanes in [Vanes::Three, Vanes::Four] {
            let places: Vec<_> =
                vanes.from_mark(Index::from_degrees(mark), Index::from_degrees(cock)).collect();
            prop_assert_eq!(places.len(), usize::from(vanes.count()));
            let on_string = Index::from_degrees(mark + places[0].degrees());
            prop_assert!(on_string.is_at(Index::from_degrees(cock)));
        }
    }
}
