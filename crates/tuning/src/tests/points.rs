//! The few points that stand for the standard normal.

use nalgebra::{Matrix4, Vector4};

use crate::normal_points::normal_points;
use crate::tolerance::{ROUNDING, assert_within};

/// How far the variance of so few points may be from one, and their covariances from none.
const MOMENT: f64 = 0.15;

#[test]
fn every_point_has_its_mirror_image_so_that_the_mean_is_zero() {
    let mean: Vector4<f64> = normal_points().iter().sum();
    assert_within(mean.amax(), 0.0, ROUNDING);
}

#[test]
fn their_covariance_is_nearly_the_identity() {
    let points = normal_points();
    let squares: Matrix4<f64> = points.iter().map(|point| point * point.transpose()).sum();
    let covariance = squares / points.len() as f64;
    assert_within((covariance - Matrix4::identity()).amax(), 0.0, MOMENT);
}

#[test]
fn no_two_are_the_same() {
    let points = normal_points();
    for (at, point) in points.iter().enumerate() {
        assert!(points[..at].iter().all(|other| (other - point).norm() > 0.1));
    }
}
