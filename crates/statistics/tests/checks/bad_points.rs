//! Planar samples that something cannot be told of: typed errors or stated answers, never a NaN.

use nalgebra::{Matrix2, Vector2};
use quarterturn_statistics::{
    AnovaError, DistanceBound, Estimate, Family, Level, PlanarEstimate, PlanarSample, PooledSpread,
    Sample, SampleError, SpreadError, StatisticError, bartlett_test, brown_forsythe_test,
    planar_brown_forsythe_test, scatter_excess, spread_ratio,
};

use crate::groups::sample;
use crate::tolerance::{ALGEBRA, assert_relative};

/// What everything that may refuse says of a sample.
fn refusals(sample: &PlanarSample) -> Vec<Option<StatisticError>> {
    let zero = Vector2::zeros();
    vec![
        sample.mean_estimate().map(|mean| mean.test(zero)).err(),
        sample.drift().map(|drift| drift.test(zero)).err(),
        sample.prediction_ellipse(Level::P95).err(),
        sample.sphericity_test().err(),
        sample.pooled_difference(sample).err(),
        sample.unequal_difference(sample).err(),
    ]
}

#[test]
fn one_point_two_and_three() {
    let few = |n, needed| Some(StatisticError::TooFew { n, needed });
    let one = sample(&[(3.0, 4.0)]);
    assert_eq!(refusals(&one), [few(1, 3), few(1, 4), few(1, 3), few(1, 3), few(2, 4), few(1, 3)]);
    assert_eq!(one.radius_holding_estimate(Level::P50, Level::P90).err(), few(1, 5));
    let plain = [one.mean_radius(), one.extreme_spread(), one.radius_holding(Level::P95)];
    assert_eq!(plain.map(f64::to_bits), [0; 3]);
    assert_eq!(one.geometric_median(), Vector2::new(3.0, 4.0));
    assert_eq!((one.influence(&[0]), one.without(&[0])), (None, None));
    assert_eq!(one.influence(&[7]).unwrap().without.n, 1);
    let two = sample(&[(0.0, 0.0), (1.0, 2.0)]);
    let expected =
        [few(2, 3), few(2, 4), few(2, 3), few(2, 3), Some(StatisticError::Collinear), few(2, 3)];
    assert_eq!(refusals(&two), expected);
    let three = sample(&[(0.0, 0.0), (1.0, 2.0), (5.0, 1.0)]);
    assert_eq!(refusals(&three), [None, few(3, 4), None, None, None, None]);
}

#[test]
fn equal_points_and_points_on_a_line() {
    let equal = sample(&[(0.1, 0.7); 9]);
    assert_eq!(refusals(&equal), [Some(StatisticError::NoScatter); 6]);
    assert_eq!(equal.geometric_median(), Vector2::new(0.1, 0.7));
    assert_eq!([equal.mean_radius(), equal.extreme_spread()].map(f64::to_bits), [0; 2]);
    let interval = equal.radius_holding_estimate(Level::P50, Level::P90).unwrap().interval;
    assert_eq!([interval.lower, interval.upper].map(f64::to_bits), [0; 2]);
    let line: Vec<_> = (0..9).map(|i| f64::from(i * i % 7)).map(|t| (100.0 + t, 3.0 * t)).collect();
    let line = sample(&line);
    let flat = Some(StatisticError::Collinear);
    assert_eq!(refusals(&line), [flat, flat, flat, None, flat, flat]);
    // As long as can be: round with no probability.
    assert!(line.sphericity_test().unwrap().p_value < 1e-30);
    let even: Vec<_> = (0..9).map(|i| (f64::from(i), -2.0 * f64::from(i))).collect();
    assert_eq!(sample(&even).drift().err(), Some(StatisticError::NoScatter));
}

#[test]
fn numbers_that_are_none_do_not_get_in() {
    for wrong in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e300, -1e300] {
        let points = vec![Vector2::zeros(), Vector2::new(wrong, 0.0)];
        let error = PlanarSample::new(points).unwrap_err();
        let position = match error {
            SampleError::NotFinite { position, .. } | SampleError::TooLarge { position, .. } => {
                position
            }
            other => panic!("{other}"),
        };
        assert_eq!(position, 1);
    }
}

fn finite(estimate: &Estimate) -> bool {
    let Estimate { value, standard_error, interval, .. } = *estimate;
    [value, standard_error, interval.lower, interval.upper].iter().all(|x| x.is_finite())
}

/// The largest and the smallest coordinates give numbers.
#[test]
fn extreme_sizes_stay_finite() {
    let shape =
        [(1.0, -1.0), (-1.0, 1.0), (1.0, 0.9), (0.3, 0.2), (-0.6, -0.8), (0.1, 0.5), (0.2, 0.2)];
    for size in [1e70, 1e-70] {
        let sample = sample(&shape.map(|(x, y)| (size * x, size * y)));
        assert_eq!(refusals(&sample), [None; 6], "{size:e}");
        let plain =
            [sample.mean_radius(), sample.extreme_spread(), sample.geometric_median().norm()];
        assert!(plain.iter().all(|x| x.is_finite() && *x > 0.0), "{plain:?}");
        let radius = sample.radius_holding_estimate(Level::P50, Level::P90).unwrap();
        let mean = sample.mean_estimate().unwrap();
        let along = mean.along(Vector2::new(1.0, 1.0), Family::AllDirections, Level::P99).unwrap();
        assert!(finite(&radius) && finite(&along));
        let DistanceBound { distance, at_most, .. } = mean.distance(Level::P99).unwrap();
        assert!(distance <= at_most && at_most.is_finite());
        let p_values = [mean.test(Vector2::zeros()), sample.sphericity_test().unwrap()];
        assert!(p_values.iter().all(|test| (0.0..=1.0).contains(&test.p_value)));
    }
    let far = sample(&[(1e70, 0.0), (-1e70, 1.0), (0.0, -1e70)]);
    let near = sample(&[(-1e70, 0.0), (1e70, 1.0), (0.0, 1e70)]);
    let refused = far.paired_difference(&near).unwrap_err();
    assert!(matches!(refused, StatisticError::Sample(SampleError::TooLarge { .. })), "{refused}");
}

#[test]
fn pairs_and_directions() {
    let [two, three] = [2, 3]
        .map(|n| sample(&(0..n).map(|i| (f64::from(i), f64::from(i * i))).collect::<Vec<_>>()));
    let unpaired = three.paired_difference(&two).unwrap_err();
    assert_eq!(unpaired.to_string(), "3 observations beside 2; each needs its partner");
    let mean = three.mean_estimate().unwrap();
    for direction in
        [Vector2::zeros(), Vector2::new(f64::NAN, 1.0), Vector2::new(f64::INFINITY, 0.0)]
    {
        let refused = mean.along(direction, Family::Planned(1), Level::P95).unwrap_err();
        assert_eq!(
            refused.to_string(),
            "a direction of no length; give the way along which to look"
        );
    }
    // As many intervals as there can be are still finite, none are one.
    for family in [Family::Planned(0), Family::Planned(usize::MAX)] {
        let along = mean.along(Vector2::x(), family, Level::P95).unwrap();
        assert!(along.interval.upper.is_finite() && along.interval.upper > along.value);
    }
    let exact = PlanarEstimate { covariance: Matrix2::zeros(), ..mean };
    assert_relative(exact.distance(Level::P95).unwrap().at_most, exact.value.norm(), ALGEBRA);
    assert!(exact.test(Vector2::zeros()).p_value < 1e-12);
}

#[test]
fn groups_that_cannot_be_compared() {
    let scattered = Sample::new(vec![1.0, 2.0, 4.0]).unwrap();
    let [one, equal] = [1, 4].map(|n| Sample::new(vec![7.0; n]).unwrap());
    let spread = |group: &Sample| PooledSpread::from(group);
    let too_few = StatisticError::TooFewGroups { groups: 1 };
    assert_eq!(too_few.to_string(), "1 groups; a comparison needs at least 2");
    assert_eq!(bartlett_test(&[spread(&scattered)]), Err(too_few));
    let anova = |error: AnovaError| Err(StatisticError::Anova(error));
    let alone = brown_forsythe_test(std::slice::from_ref(&scattered));
    assert_eq!(alone, anova(AnovaError::TooFewGroups { groups: 1 }));
    assert_eq!(scatter_excess(&[spread(&scattered)]), Err(too_few));
    let none = StatisticError::Spread(SpreadError::NoScatter { sum_of_squares: 0.0 });
    let single = StatisticError::Spread(SpreadError::TooFewPoints { points: 1 });
    assert_eq!(bartlett_test(&[spread(&scattered), spread(&equal)]), Err(none));
    assert_eq!(bartlett_test(&[spread(&scattered), spread(&one)]), Err(single));
    assert_eq!(spread_ratio(&spread(&scattered), &spread(&equal), Level::P95), Err(none));
    assert_eq!(spread_ratio(&spread(&one), &spread(&scattered), Level::P95), Err(single));
    let equals = [equal.clone(), equal.clone()];
    assert_eq!(brown_forsythe_test(&equals), anova(AnovaError::NoScatter));
    let singles = [one.clone(), one];
    let no_replicates = anova(AnovaError::NoReplicates { groups: 2 });
    assert_eq!(brown_forsythe_test(&singles), no_replicates);
    let point = sample(&[(1.0, 1.0)]);
    let planar = planar_brown_forsythe_test(&[point.clone(), point]);
    assert_eq!(planar, no_replicates);
    let vast = PooledSpread { sum_of_squares: 1.0, degrees_of_freedom: usize::MAX, points: 3 };
    assert!(matches!(spread_ratio(&vast, &vast, Level::P95), Err(StatisticError::Distribution(_))));
}
