//! The examples of docs/methods.md, digit by digit.

use nalgebra::{Matrix2, Vector2};
use quarterturn_statistics::{
    Coverage, Family, Level, MinimumCovarianceDeterminant, PlanarSample, PooledSpread, Sample,
    Side, bartlett_test, brown_forsythe_test, expected_extreme_spread, expected_mean_radius,
    generalized_esd, grubbs_critical_value, grubbs_test, spread_ratio,
};

use crate::groups::sample;
use crate::tolerance::{FOUR_DECIMALS, THREE_DECIMALS, assert_close};

fn a() -> PlanarSample {
    sample(&[(0.0, 0.0), (4.0, 0.0), (0.0, 2.0), (4.0, 2.0), (2.0, 6.0)])
}

fn b() -> PlanarSample {
    sample(&[(0.0, 0.0), (4.0, 0.0), (2.0, 3.0)])
}

/// To the third decimal, which is the last one printed.
#[track_caller]
fn three(actual: f64, printed: f64) {
    assert_close(actual, printed, THREE_DECIMALS);
}

#[test]
fn how_wide_a_group_is() {
    let a = a();
    assert_eq!(a.centroid(), Vector2::new(2.0, 2.0));
    assert_eq!(a.covariance().unwrap(), Matrix2::new(4.0, 0.0, 0.0, 6.0));
    three(a.mean_radius(), 2.731);
    three(expected_mean_radius(5), 1.121);
    three(a.extreme_spread(), 6.325);
    three(expected_extreme_spread(5).unwrap().mean, 3.066);
    let sigma = PooledSpread::of([&a]).estimate(Level::P95).unwrap();
    three(sigma.value, 2.307);
    three(sigma.interval.lower, 1.510);
    three(sigma.interval.upper, 4.284);
    three(PooledSpread::along(Vector2::x(), [&a]).estimate(Level::P95).unwrap().value, 2.128);
    three(a.radius_holding(Level::P50), 2.828);
    three(a.radius_holding(Level::new(0.8).unwrap()), 3.063);
    let median = a.radius_holding_estimate(Level::P50, Level::P90).unwrap();
    three(median.interval.lower, 2.236);
    three(median.interval.upper, 4.472);
    three(PooledSpread::of([&a]).radius_holding(Level::P50, Level::P95).unwrap().value, 2.716);
    three(a.geometric_median().x, 2.0);
    three(a.geometric_median().y, 1.701);
}

#[test]
fn middle_roundness_and_drift() {
    let a = a();
    let (up, across) = a.mean_estimate().unwrap().region(Level::P95).half_axes();
    three(up, 5.529);
    three(across, 4.514);
    let (up, across) = a.prediction_ellipse(Level::P95).unwrap().half_axes();
    assert_close(up, 13.54, 10.0 * THREE_DECIMALS);
    assert_close(across, 11.06, 10.0 * THREE_DECIMALS);
    let round = a.sphericity_test().unwrap();
    three(round.statistic, 0.96);
    three(round.p_value, 0.941);
    let drift = a.drift().unwrap();
    three((drift.value - Vector2::new(0.4, 1.4)).norm(), 0.0);
    let test = drift.test(Vector2::zeros());
    three(test.statistic, 33.0);
    three(test.p_value, 1.0 / 12.0);
}

#[test]
fn spread() {
    let [a, b] = [a(), b()].map(|group| PooledSpread::of([&group]));
    let ratio = spread_ratio(&a, &b, Level::P95).unwrap().test;
    three(ratio.statistic, 1.429);
    three(ratio.p_value, 0.773);
    let bartlett = bartlett_test(&[a, b]).unwrap();
    three(bartlett.statistic, 0.148);
    assert_close(bartlett.p_value, 0.70, 10.0 * THREE_DECIMALS);
    let numbers = [[1.0, 2.0, 3.0], [0.0, 4.0, 8.0]].map(|x| Sample::new(x.to_vec()).unwrap());
    let brown_forsythe = brown_forsythe_test(&numbers).unwrap();
    three(brown_forsythe.statistic, 2.118);
    three(brown_forsythe.p_value, 0.219);
}

#[test]
fn differences() {
    let (a, b) = (a(), b());
    let one = a.mean_estimate().unwrap();
    let test = one.test(Vector2::new(2.0, 5.0));
    three(test.statistic, 7.5);
    three(test.p_value, 0.205);
    let alike = a.pooled_difference(&b).unwrap();
    assert_eq!(alike.value, Vector2::new(0.0, 1.0));
    three(alike.covariance.m11, 2.133);
    three(alike.covariance.m22, 2.667);
    let test = alike.test(Vector2::zeros());
    three(test.statistic, 0.375);
    three(test.p_value, 0.859);
    let own = a.unequal_difference(&b).unwrap();
    three(own.covariance.m22, 2.2);
    assert_close(own.degrees_of_freedom, 4.99, 10.0 * THREE_DECIMALS);
    for (family, reach) in
        [(Family::Planned(1), 2.483), (Family::Planned(2), 3.126), (Family::AllDirections, 4.514)]
    {
        let along = one.along(Vector2::x(), family, Level::P95).unwrap();
        three(along.interval.upper - 2.0, reach);
    }
    three(alike.distance(Level::P95).unwrap().at_most, 4.173);
}

#[test]
fn one_of_four_numbers() {
    let numbers = Sample::new(vec![1.0, 2.0, 3.0, 10.0]).unwrap();
    let grubbs = grubbs_test(&numbers, Side::Either).unwrap();
    three(grubbs.test.statistic, 1.470);
    three(grubbs.test.p_value, 0.081);
    three(grubbs.influence.without.centre, 2.0);
    three(grubbs_critical_value(4, Side::Either, Level::P95).unwrap(), 1.481);
    assert_eq!(generalized_esd(&numbers, 1, Level::P95).unwrap().outliers, 0);
}

#[test]
fn one_of_six_points() {
    let points = [(3.0, 0.0), (-2.0, 0.0), (0.0, 1.0), (0.0, -1.0), (0.0, 0.0), (9.0, 9.0)];
    let points = sample(&points);
    let robust = MinimumCovarianceDeterminant::new(&points, Coverage::Half, 1).unwrap();
    assert_eq!((robust.subset, robust.kept), (vec![1, 2, 3, 4], vec![0, 1, 2, 3, 4]));
    assert_close(robust.log_determinant, (2.0_f64 / 3.0).ln(), FOUR_DECIMALS);
    assert_close((robust.centre - Vector2::new(0.2, 0.0)).norm(), 0.0, FOUR_DECIMALS);
    let ratio = robust.covariance / robust.covariance.m22;
    assert_close(ratio.m11, 3.2 / 0.5, FOUR_DECIMALS);
    assert!(robust.squared_distances.iter().all(|squared| *squared < robust.cutoff));
}
