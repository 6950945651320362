//! Mean directions against a published data set and by symmetry.

use std::f64::consts::PI;

use quarterturn_statistics::{MeanDirection, Sample};

use crate::fixture::Fixture;
use crate::tolerance::{ALGEBRA, SIX_DECIMALS, assert_close};

fn mean_direction(degrees: impl IntoIterator<Item = f64>) -> MeanDirection {
    MeanDirection::of(&Sample::new(degrees.into_iter().map(f64::to_radians).collect()).unwrap())
}

// Source: the turtle directions of the circular statistics literature; mean 317.235320 degrees, resultant 0.8186496.
#[test]
fn turtles() {
    let angles = Fixture::read("turtles.csv").numbers();
    let mean = mean_direction(angles.iter().map(|row| row[0]));
    assert_close(mean.direction_rad.unwrap().to_degrees(), 317.235_320, SIX_DECIMALS);
    assert_close(mean.resultant_length, 0.818_649_63, SIX_DECIMALS);
    assert_eq!(mean.n, angles.len());
}

#[test]
fn across_the_start_of_the_turn() {
    let mean = mean_direction([350.0, 10.0, 370.0, -10.0]);
    assert!((0.0..1e-9).contains(&mean.direction_rad.unwrap()), "{mean:?}");
    assert_close(mean.resultant_length, 10_f64.to_radians().cos(), ALGEBRA);
    assert_close(mean_direction([180.0]).direction_rad.unwrap(), PI, ALGEBRA);
}

#[test]
fn directions_that_cancel_point_nowhere() {
    let mean = mean_direction([10.0, 130.0, 250.0]);
    assert_eq!(mean.direction_rad, None);
    assert_close(mean.resultant_length, 0.0, ALGEBRA);
}
