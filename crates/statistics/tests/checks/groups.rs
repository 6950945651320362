//! Groups of points against printed values, other programs, and brute force.

use std::f64::consts::PI;

use nalgebra::{Rotation2, Vector2};
use proptest::prelude::{ProptestConfig, any, prop_assert, prop_assert_eq, proptest};
use quarterturn_statistics::{
    Family, Level, PlanarSample, PooledSpread, expected_extreme_spread, expected_mean_radius,
};

use crate::fixture::Fixture;
use crate::group_values::{Values, group};
use crate::tolerance::{
    ALGEBRA, FIVE_DECIMALS, SEVEN_DECIMALS, SIMULATED_TABLE, SIX_DECIMALS, STANDARD_ERRORS,
    SUM_OF_TENS, TWELVE_DIGITS, assert_close, assert_relative,
};

const NAMES: [&str; 8] = ["round", "long", "tails", "five", "moving", "pair", "many", "outlying"];

pub fn sample(points: &[(f64, f64)]) -> PlanarSample {
    PlanarSample::new(points.iter().map(|&(x, y)| Vector2::new(x, y)).collect()).unwrap()
}

#[test]
fn radii_and_middles_as_other_programs_find_them() {
    let values = Values::read();
    for name in NAMES {
        let sample = group(name);
        let close = |value: f64, what: &str| assert_relative(value, values.of(name, what), ALGEBRA);
        close(sample.mean_radius(), "mean_radius");
        close(sample.extreme_spread(), "extreme_spread");
        for (share, what) in [(0.5, "radius_0.5"), (0.8, "radius_0.8"), (0.95, "radius_0.95")] {
            close(sample.radius_holding(Level::new(share).unwrap()), what);
        }
        let median = sample.geometric_median();
        let by_newton = Vector2::new(
            values.of(name, "geometric_median_x"),
            values.of(name, "geometric_median_y"),
        );
        // Both sums of distances are flat there: half the digits.
        assert_close((median - by_newton).norm(), 0.0, SEVEN_DECIMALS);
    }
}

#[test]
fn intervals_of_a_radius_run_from_rank_to_rank() {
    let values = Values::read();
    let mut answered = 0;
    for (name, share) in NAMES.into_iter().flat_map(|name| [(name, 0.5), (name, 0.8)]) {
        let sample = group(name);
        let n = sample.n();
        let [lower, upper] =
            ["lower", "upper"].map(|end| values.of(name, &format!("{end}_rank_{share}")) - 1.0);
        let estimate = sample.radius_holding_estimate(Level::new(share).unwrap(), Level::P90);
        if upper > (n - 1) as f64 {
            assert!(estimate.is_err(), "{name} {share}");
            continue;
        }
        let own = (n as f64 / (n - 1) as f64).sqrt();
        // The quantile at rank/(n − 1) is the radius of that rank.
        let radius = |rank: f64| {
            let at = (rank / (n - 1) as f64).clamp(1e-12, 1.0 - 1e-12);
            own * sample.radius_holding(Level::new(at).unwrap())
        };
        let interval = estimate.unwrap().interval;
        let bottom = if lower < 0.0 { 0.0 } else { radius(lower) };
        assert_close(interval.lower, bottom, SIX_DECIMALS);
        assert_close(interval.upper, radius(upper), SIX_DECIMALS);
        answered += 1;
    }
    assert!(answered > 8, "{answered}");
}

// Source: closed form; the extreme spread of many simulated groups by another program.
#[test]
fn expected_radii_and_spreads_as_tabulated() {
    let table = Fixture::read("extreme_spread_table.csv").numbers();
    for row in &table {
        let [n, mean, error, deviation] = row[..4] else { panic!("four columns in {row:?}") };
        let n = whole(n);
        let expected = expected_extreme_spread(n).unwrap();
        // Both tables are simulated.
        assert_close(expected.mean, mean, STANDARD_ERRORS * error * 2.0_f64.sqrt());
        assert_close(expected.standard_deviation, deviation, STANDARD_ERRORS * error);
        assert_close(expected_mean_radius(n), row[10], SEVEN_DECIMALS);
    }
    assert_eq!(table.len(), 12);
    // Two points lie √2 σ times a Rayleigh variable apart: √π on average, √(4 − π) about that.
    let two = expected_extreme_spread(2).unwrap();
    assert_close(two.mean, PI.sqrt(), FIVE_DECIMALS);
    assert_close(two.standard_deviation, (4.0 - PI).sqrt(), FIVE_DECIMALS);
}

#[test]
fn the_table_of_extreme_spreads_is_what_was_simulated() {
    for row in Fixture::read("extreme_spread.csv").numbers() {
        let expected = expected_extreme_spread(whole(row[0])).unwrap();
        assert_close(expected.mean, row[1], SIMULATED_TABLE);
        assert_close(expected.standard_deviation, row[3], SIMULATED_TABLE);
    }
    let means = (2..=1000).map(|n| expected_extreme_spread(n).unwrap().mean);
    assert!(means.is_sorted_by(|a, b| a < b));
    assert_eq!([0, 1, 1001].map(expected_extreme_spread), [None; 3]);
    assert_eq!([0, 1].map(expected_mean_radius).map(f64::to_bits), [0, 0]);
}

fn whole(n: f64) -> usize {
    format!("{n}").parse().unwrap()
}

// Source: Rayleigh's distribution, closed form: radii that hold shares of a round cloud of σ = 1, six decimals.
#[test]
fn radii_of_the_model() {
    let spread = PooledSpread { sum_of_squares: 8.0, degrees_of_freedom: 8, points: 5 };
    let sigma = spread.estimate(Level::P95).unwrap();
    for (share, factor) in [
        (0.5, 1.177_410),
        (0.75, 1.665_109),
        (0.9, 2.145_966),
        (0.95, 2.447_747),
        (0.98, 2.797_150),
        (0.99, 3.034_854),
        (0.393_469_340_287, 1.0),
        (0.864_664_716_763, 2.0),
    ] {
        let radius = spread.radius_holding(Level::new(share).unwrap(), Level::P95).unwrap();
        assert_close(radius.value / sigma.value, factor, SIX_DECIMALS);
        assert_close(radius.interval.upper / sigma.interval.upper, factor, SIX_DECIMALS);
        assert_close(radius.interval.lower / sigma.interval.lower, factor, SIX_DECIMALS);
    }
}

/// The trap is to divide by 2n or by n − 1: five points whose squared distances sum to 8 have σ² = 1.
#[test]
fn a_group_loses_two_degrees_of_freedom_for_its_centre() {
    let square = sample(&[(1.0, 1.0), (-1.0, 1.0), (-1.0, -1.0), (1.0, -1.0), (0.0, 0.0)]);
    let spread = PooledSpread::of([&square]);
    assert_eq!(
        (spread.sum_of_squares.to_bits(), spread.degrees_of_freedom),
        (8.0_f64.to_bits(), 8)
    );
    for (direction, sum) in
        [(Vector2::x(), 4.0), (Vector2::y(), 4.0), (Vector2::new(3.0, 3.0), 4.0)]
    {
        let along = PooledSpread::along(direction, [&square]);
        assert_relative(along.sum_of_squares, sum, ALGEBRA);
        assert_eq!((along.degrees_of_freedom, along.points), (4, 5));
    }
}

#[test]
fn roundness_and_drift_as_other_programs_find_them() {
    let values = Values::read();
    for name in ["round", "long"] {
        let test = group(name).sphericity_test().unwrap();
        assert_relative(test.statistic, values.of(name, "mauchly_w"), TWELVE_DIGITS);
    }
    let drift = group("moving").drift().unwrap();
    let close = |value: f64, what: &str| {
        assert_relative(value, values.of("moving", what), TWELVE_DIGITS);
    };
    let test = drift.test(Vector2::zeros());
    close(test.statistic, "drift_t2");
    close(test.p_value, "drift_p");
    for (axis, name) in [(Vector2::x(), "x"), (Vector2::y(), "y")] {
        let along = drift.along(axis, Family::Planned(1), Level::P90).unwrap();
        close(along.value, &format!("drift_{name}"));
        close(along.standard_error, &format!("drift_error_{name}"));
    }
}

/// Four corners of a rectangle and any triangle whose widest angle is 120° or more.
#[test]
fn middles_known_without_computing() {
    let rectangle = sample(&[(0.0, 0.0), (8.0, 0.0), (8.0, 2.0), (0.0, 2.0)]);
    assert_close((rectangle.geometric_median() - Vector2::new(4.0, 1.0)).norm(), 0.0, SUM_OF_TENS);
    let blunt = sample(&[(-5.0, 1.0), (0.0, 0.0), (6.0, 1.0)]);
    assert_eq!(blunt.geometric_median(), Vector2::zeros());
    // The centroid is a point of the sample, and not the median: the step past it is needed.
    let centred =
        sample(&[(0.0, 0.0), (10.0, 0.0), (10.0, 1.0), (-20.0, -1.0), (10.0, 2.0), (-10.0, -2.0)]);
    assert_eq!(centred.centroid(), Vector2::zeros());
    let twice = sample(&[(0.0, 0.0), (0.0, 0.0), (9.0, 3.0), (-1.0, 7.0)]);
    assert_eq!(twice.geometric_median(), Vector2::zeros());
    let line = sample(&[(0.0, 0.0), (1.0, 1.0), (4.0, 4.0), (9.0, 9.0)]);
    let middle = line.geometric_median();
    assert_close(middle.x, middle.y, SUM_OF_TENS);
    assert!((1.0..=4.0).contains(&middle.x), "{middle}");
}

fn points(
    count: std::ops::Range<usize>,
) -> impl proptest::strategy::Strategy<Value = Vec<(f64, f64)>> {
    // Coordinates to a tenth meet, coincide and stand in lines.
    proptest::collection::vec((-200_i32..200, -200_i32..200), count).prop_map(|points| {
        points.into_iter().map(|(x, y)| (f64::from(x) / 10.0, f64::from(y) / 10.0)).collect()
    })
}

use proptest::strategy::Strategy as _;

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn the_extreme_spread_is_the_largest_of_all_pairs(given in points(1..60), in_line in any::<bool>()) {
        let given: Vec<_> = given.into_iter().map(|(x, y)| (x, if in_line { 0.5 * x } else { y })).collect();
        let largest = given.iter().flat_map(|a| given.iter().map(move |b| (a.0 - b.0).hypot(a.1 - b.1)));
        let largest = largest.fold(0.0, f64::max);
        prop_assert!((sample(&given).extreme_spread() - largest).abs() <= ALGEBRA * largest);
    }

    #[test]
    fn no_place_near_the_geometric_median_has_less_distance(given in points(1..30), way in 0.0..6.0_f64) {
        let sample = sample(&given);
        let total = |place: Vector2<f64>| sample.points().iter().map(|p| (p - place).norm()).sum::<f64>();
        let median = sample.geometric_median();
        let aside = median + 0.01 * Vector2::new(way.cos(), way.sin());
        prop_assert!(total(median) <= total(aside) + ALGEBRA * total(aside));
    }

    #[test]
    fn moved_turned_and_stretched_groups(
        given in points(5..40),
        (shift_x, shift_y, turn, factor) in (-500.0..500.0_f64, -500.0..500.0_f64, 0.0..6.0_f64, 0.1..10.0_f64),
    ) {
        let plain = sample(&given);
        let turned = |p: &Vector2<f64>| factor * (Rotation2::new(turn) * p) + Vector2::new(shift_x, shift_y);
        let moved = PlanarSample::new(plain.points().iter().rev().map(turned).collect()).unwrap();
        let size = 1e-11 * factor * 1000.0_f64.max(500.0 / factor);
        let radii = |s: &PlanarSample| [s.mean_radius(), s.extreme_spread(), s.radius_holding(Level::P50)];
        for (before, after) in radii(&plain).into_iter().zip(radii(&moved)) {
            prop_assert!((factor * before - after).abs() <= size);
        }
        let middle = turned(&plain.geometric_median());
        // Flat at the bottom, and between two middle points of a line any place will do.
        let total = |place: Vector2<f64>| moved.points().iter().map(|p| (p - place).norm()).sum::<f64>();
        prop_assert!((total(middle) - total(moved.geometric_median())).abs() <= 1e-9 * total(middle));
        if let (Ok(before), Ok(after)) = (plain.sphericity_test(), moved.sphericity_test()) {
            prop_assert!((before.statistic - after.statistic).abs() <= 1e-9);
        }
        // In reverse order the drift turns round.
        if let (Ok(before), Ok(after)) = (plain.drift(), moved.drift()) {
            let back = -factor * (Rotation2::new(turn) * before.value);
            prop_assert!((after.value - back).norm() <= size);
            let [p, q] = [before, after].map(|drift| drift.test(Vector2::zeros()).p_value);
            prop_assert!((p - q).abs() <= 1e-7);
        }
        if let (Ok(before), Ok(after)) = (plain.prediction_ellipse(Level::P90), moved.prediction_ellipse(Level::P90)) {
            prop_assert!((after.area() - factor * factor * before.area()).abs() <= 1e-7 * after.area());
            prop_assert_eq!(before.contains(plain.centroid()), after.contains(moved.centroid()));
        }
    }
}
