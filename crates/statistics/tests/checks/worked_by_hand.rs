//! The examples that docs/methods.md works by hand, to the digits it gives.

use nalgebra::{Matrix2, Vector2};
use quarterturn_statistics::distributions::NoncentralChiSquared;
use quarterturn_statistics::{
    AnalysisOfVariance, HarmonicFit, Level, MeanDirection, Sample, probability_within_circle,
};

use crate::tolerance::{ALGEBRA, FOUR_DECIMALS, THREE_DECIMALS, assert_close};

fn sample(values: impl IntoIterator<Item = f64>) -> Sample {
    Sample::new(values.into_iter().collect()).unwrap()
}

fn radians(degrees: impl IntoIterator<Item = f64>) -> Sample {
    sample(degrees.into_iter().map(f64::to_radians))
}

#[test]
fn an_offset_circle_two_ways() {
    let cdf = NoncentralChiSquared::new(2.0, 1.0).unwrap().cdf(1.0);
    assert_close(cdf, 0.2671, FOUR_DECIMALS);
    let p = probability_within_circle(Vector2::new(1.0, 0.0), &Matrix2::identity(), 1.0);
    assert_close(p, 0.2671, FOUR_DECIMALS);
    // Four nodes, as in the text.
    let node = |q: f64, of: f64| of * if q == 0.0 { 0.5 } else { (1.0 - (-0.5 * q).exp()) / q };
    let four = [(0.0, 0.0), (2.0, 1.0), (4.0, 2.0), (2.0, 1.0)].map(|(q, of)| node(q, of));
    assert_close(four.iter().sum::<f64>() / 4.0, 0.2661, FOUR_DECIMALS);
}

#[test]
fn five_directions() {
    let mean = MeanDirection::of(&radians([350.0, 10.0, 20.0, 5.0, 355.0]));
    assert_close(mean.resultant_length, 0.982_72, FOUR_DECIMALS);
    assert_close(mean.standard_deviation_rad(), 0.1867, FOUR_DECIMALS);
    let estimate = mean.estimate(Level::P95).unwrap();
    assert_close(estimate.value.to_degrees(), 4.0, 0.05);
    assert_close((estimate.interval.upper - estimate.value).to_degrees(), 15.0, 0.05);
    assert_close(mean.rayleigh_test().statistic, 4.83, 0.005);
}

#[test]
fn a_harmonic_of_four_positions() {
    let values = sample([7.0, 3.0, -1.0, 1.0]);
    let fit = HarmonicFit::new(&radians([0.0, 90.0, 180.0, 270.0]), &values, 1).unwrap();
    for (coefficient, expected) in fit.coefficients().iter().zip([2.5, 4.0, 1.0]) {
        assert_close(*coefficient, expected, ALGEBRA * 10.0);
    }
    assert_close(fit.covariance().unwrap()[(1, 1)], 0.5, ALGEBRA);
    let test = fit.harmonic_test(1).unwrap();
    assert_close(test.statistic, 17.0, ALGEBRA * 100.0);
    assert_close(test.p_value, 0.169, THREE_DECIMALS);
}

#[test]
fn three_groups_of_three() {
    let groups = [[1.0, 2.0, 3.0], [2.0, 3.0, 4.0], [6.0, 7.0, 8.0]].map(sample);
    let analysis = AnalysisOfVariance::of(&groups).unwrap();
    assert_close(analysis.between, 42.0, ALGEBRA * 42.0);
    assert_close(analysis.within, 6.0, ALGEBRA * 6.0);
    let test = analysis.test().unwrap();
    assert_close(test.statistic, 21.0, ALGEBRA * 21.0);
    assert_close(test.p_value, 1.0 / 512.0, ALGEBRA);
}
