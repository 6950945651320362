//! Where a mark may be put.

use quarterturn_geometry::{Index, Offset, Positions};

use super::journal::{Journal, shot};
use super::planted::Planted;

fn places(journal: &Journal) -> Vec<f64> {
    journal.report("1").positions.iter().map(|at| at.index.degrees()).collect()
}

fn with_positions(count: u16) -> Journal {
    Journal::of(1).with(|setup| setup.positions = Positions::new(count).unwrap())
}

#[test]
fn thirds_go_from_where_the_mark_stood_at_first_also_after_turning() {
    let thirds = with_positions(3).with(|setup| setup.shafts[0].1 = Index::from_degrees(50.0));
    assert_eq!(places(&thirds), [50.0, 170.0, 290.0]);
    let turned = thirds.end([shot("1", 170.0 / 30.0, Offset::ZERO)]);
    assert_eq!(places(&turned), [50.0, 170.0, 290.0]);
}

#[test]
fn quarters_go_from_twelve_and_a_mark_between_them_may_stay() {
    let quarters = with_positions(4).with(|setup| setup.shafts[0].1 = Index::from_degrees(50.0));
    assert_eq!(places(&quarters), [0.0, 90.0, 180.0, 270.0, 50.0]);
}

#[test]
fn a_mark_that_the_eye_sees_at_a_place_stands_there() {
    let sevenths = with_positions(7).with(|setup| setup.shafts[0].1 = Index::from_degrees(51.43));
    assert_eq!(places(&sevenths).len(), 7);
    assert!(places(&sevenths).contains(&51.43));
}

#[test]
fn the_finest_positions_find_a_place_that_no_hour_reaches() {
    let turning = Offset::new(0.0, 24.0).rotated(Index::from_degrees(-15.0).angle());
    let crooked = Planted { centre: Offset::new(0.0, -24.0), turning, ..Planted::default() };
    let journal =
        (0..12).fold(with_positions(72), |all, hour| all.end([crooked.shot("1", f64::from(hour))]));
    let best = journal
        .report("1")
        .positions
        .into_iter()
        .max_by(|one, other| one.within.total_cmp(&other.within));
    let off_deg = best.unwrap().index.turn_to(Index::from_degrees(345.0)).degrees().abs();
    assert!(off_deg <= 5.0, "{off_deg}");
}
