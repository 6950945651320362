//! The few points that stand for the standard normal.

use nalgebra::Vector4;

use crate::normal_points::normal_points;
use crate::tolerance::{ROUNDING, VARIANCE_OF_FEW_POINTS, assert_within};

#[test]
fn every_point_has_its_mirror_image_so_that_the_mean_is_zero() {
    let mean: Vector4<f64> = normal_points().iter().sum();
    assert_within(mean.amax(), 0.0, ROUNDING);
}

#[test]
fn on_every_axis_their_variance_is_nearly_one() {
    let points = normal_points();
    let squares: Vector4<f64> = points.iter().map(|point| point.component_mul(point)).sum();
    for variance in &(squares / points.len() as f64) {
        assert_within(*variance, 1.0, VARIANCE_OF_FEW_POINTS);
    }
}

#[test]
fn no_two_are_the_same() {
    let points = normal_points();
    for (at, point) in points.iter().enumerate() {
        assert!(points[..at].iter().all(|other| (other - point).norm() > 0.1));
    }
}
