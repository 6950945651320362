//! Means of planar samples and their differences against textbooks, other programs, and by invariance.

use nalgebra::{Matrix2, Rotation2, Vector2};
use proptest::prelude::{ProptestConfig, prop_assert, proptest};
use quarterturn_statistics::{Family, Level, PlanarEstimate, PlanarSample};

use crate::fixture::Fixture;
use crate::group_values::{Values, group};
use crate::groups::sample;
use crate::tolerance::{
    ALGEBRA, SEVEN_DECIMALS, SIX_DECIMALS, TWELVE_DIGITS, assert_close, assert_relative,
};

// Source: R. A. Johnson, D. W. Wichern, Applied Multivariate Statistical Analysis, example 5.1.
#[test]
fn three_points() {
    let mean = sample(&[(6.0, 9.0), (10.0, 6.0), (8.0, 3.0)]).mean_estimate().unwrap();
    assert_eq!(mean.value, Vector2::new(8.0, 6.0));
    assert_relative(
        (mean.covariance * 3.0 - Matrix2::new(4.0, -3.0, -3.0, 9.0)).norm() + 1.0,
        1.0,
        ALGEBRA,
    );
    let test = mean.test(Vector2::new(9.0, 5.0));
    assert_relative(test.statistic, 7.0 / 9.0, ALGEBRA);
    assert_close(test.p_value, 0.848_528_137, SEVEN_DECIMALS);
}

// Source: table 5.1 there, the first two columns; recomputed with numpy.
#[test]
fn twenty_points() {
    let rows = Fixture::read("sweat.csv").numbers();
    let points: Vec<_> = rows.iter().map(|row| (row[0], row[1])).collect();
    let mean = sample(&points).mean_estimate().unwrap();
    let test = mean.test(Vector2::new(4.0, 50.0));
    assert_close(test.statistic, 8.491_466_2, SEVEN_DECIMALS);
    assert_close(test.p_value, 0.035_975_04, SEVEN_DECIMALS);
    for (level, critical) in [(0.90, 5.539_443_64), (0.95, 7.504_065_09), (0.99, 12.693_910_2)] {
        let level = Level::new(level).unwrap();
        let (longer, _) = mean.region(level).half_axes();
        let (unit, _) = PlanarEstimate { ..mean }.region(Level::P50).half_axes();
        let ratio = (longer / unit).powi(2);
        let half = 2.0 * 19.0 / 18.0 * 9.0 * (2.0_f64.powf(1.0 / 9.0) - 1.0);
        assert_close(ratio * half, critical, SIX_DECIMALS);
    }
}

/// Points on an ellipse with this mean and this covariance.
fn of_moments(n: usize, mean: Vector2<f64>, covariance: Matrix2<f64>) -> PlanarSample {
    let root = covariance.cholesky().unwrap().l() * ((n - 1) as f64 / n as f64).sqrt();
    // On a circle of radius √2 three and more evenly spaced points have the covariance of the identity times n/(n − 1).
    let point = |i: usize| {
        let angle = i as f64 * std::f64::consts::TAU / n as f64;
        mean + root * (2.0_f64.sqrt() * Vector2::new(angle.cos(), angle.sin()))
    };
    PlanarSample::new((0..n).map(point).collect()).unwrap()
}

// Source: example 6.3 there (soap): moments given, fifty points each.
#[test]
fn two_samples_of_fifty() {
    let first = of_moments(50, Vector2::new(8.3, 4.1), Matrix2::new(2.0, 1.0, 1.0, 6.0));
    let second = of_moments(50, Vector2::new(10.2, 3.9), Matrix2::new(2.0, 1.0, 1.0, 4.0));
    let difference = first.pooled_difference(&second).unwrap();
    let region = difference.region(Level::P95);
    let (longer, shorter) = region.half_axes();
    assert_close(longer, 1.150_843, SIX_DECIMALS);
    assert_close(shorter, 0.651_080, SIX_DECIMALS);
    assert_close(region.direction().x.abs(), 0.289_784_15, SEVEN_DECIMALS);
    let test = difference.test(Vector2::zeros());
    assert_close(test.statistic, 52.472_222_22, SEVEN_DECIMALS);
    assert_eq!(test.n, 100);
    // The axes' own bounds are the ellipse's shadow.
    let across = difference.along(Vector2::x(), Family::AllDirections, Level::P95).unwrap();
    assert_relative(across.interval.upper - across.value, region.matrix.m11.sqrt(), ALGEBRA);
}

// Source: example 6.4 there (electricity), 45 homes with and 55 without air conditioning; moments from memory, T² recomputed with
// numpy. The book takes it for χ².
#[test]
fn two_samples_that_do_not_spread_alike() {
    let with = Matrix2::new(13_825.3, 23_823.4, 23_823.4, 73_107.4);
    let without = Matrix2::new(8_632.0, 19_616.7, 19_616.7, 55_964.5);
    let first = of_moments(45, Vector2::new(204.4, 556.6), with);
    let second = of_moments(55, Vector2::new(130.0, 355.0), without);
    let pooled = first.pooled_difference(&second).unwrap();
    assert_close(pooled.test(Vector2::zeros()).statistic, 16.066_219_1, SEVEN_DECIMALS);
    let unequal = first.unequal_difference(&second).unwrap();
    let test = unequal.test(Vector2::zeros());
    assert_close(test.statistic, 15.658_529_1, SEVEN_DECIMALS);
    let chi_squared = (-0.5 * test.statistic).exp();
    assert!(test.p_value > chi_squared && test.p_value < 3.0 * chi_squared, "{}", test.p_value);
    assert!((44.0..98.0).contains(&unequal.degrees_of_freedom));
}

// Source: Tsong and others, 1996, pooled covariance and Mahalanobis distance of two sets of six, recomputed from their published
// moments' D and Sp: T² = 3 D² and F = 9/20 T² on 2 and 9 degrees of freedom.
#[test]
fn a_difference_that_leaves_no_doubt() {
    let pooled = Matrix2::new(3.395_808, 1.029_870, 1.029_870, 4.434_833);
    let along = pooled.cholesky().unwrap().l() * Vector2::new(10.440_448_9, 0.0);
    let [first, second] = [along, Vector2::zeros()].map(|mean| of_moments(6, mean, pooled));
    let test = first.pooled_difference(&second).unwrap().test(Vector2::zeros());
    assert_relative(test.statistic, 327.008_920_6, 1e-8);
    assert_relative(test.p_value, 1.335_407e-7, 1e-6);
}

#[test]
fn tests_as_other_programs_find_them() {
    let values = Values::read();
    let [round, long, pair] = ["round", "long", "pair"].map(group);
    let close = |value: f64, what: &str| assert_relative(value, values.of("round", what), 1e-9);
    let estimates = [
        (round.mean_estimate(), "one_sample"),
        (round.paired_difference(&pair), "paired"),
        (round.pooled_difference(&long), "pooled"),
        (round.unequal_difference(&long), "unequal"),
    ];
    for (estimate, name) in estimates {
        let test = estimate.unwrap().test(Vector2::zeros());
        close(test.statistic, &format!("{name}_t2"));
        close(test.p_value, &format!("{name}_p"));
    }
    let unequal = round.unequal_difference(&long).unwrap();
    close(unequal.degrees_of_freedom, "unequal_freedom");
    let distance = round.paired_difference(&pair).unwrap().distance(Level::P95).unwrap();
    close(distance.at_most, "paired_distance_95");
}

/// Round uncertainty: the bound is the distance and t standard errors. t(0.95; 10) = 1.812461 from any table.
#[test]
fn distances_by_hand() {
    let estimate = |value: Vector2<f64>, covariance: Matrix2<f64>| PlanarEstimate {
        value,
        covariance,
        degrees_of_freedom: 10.0,
        n: 11,
    };
    let t = 1.812_461;
    let round = estimate(Vector2::new(3.0, 4.0), Matrix2::identity()).distance(Level::P95).unwrap();
    assert_relative(round.distance, 5.0, ALGEBRA);
    assert_close(round.at_most, 5.0 + t, SIX_DECIMALS);
    assert!(round.is_within(6.9) && !round.is_within(6.8));
    let middle = estimate(Vector2::zeros(), Matrix2::new(9.0, 0.0, 0.0, 1.0));
    assert_close(middle.distance(Level::P95).unwrap().at_most, 3.0 * t, 3.0 * SIX_DECIMALS);
    // On the shorter axis, far off and near: at (0, 40) the nearest end of the axis is the farthest point; at (0, 1) the farthest
    // points stand to both sides, x² + y² with y = 1 + t w, w = t/(9 t² − t²), x² = 9 t² (1 − w²).
    let wide = Matrix2::new(9.0, 0.0, 0.0, 1.0);
    let far = estimate(Vector2::new(0.0, -40.0), wide).distance(Level::P95).unwrap();
    assert_close(far.at_most, 40.0 + t, SIX_DECIMALS);
    let w = 1.0 / (8.0 * t);
    let near = estimate(Vector2::new(0.0, 1.0), wide).distance(Level::P95).unwrap();
    let expected = (9.0 * t * t * (1.0 - w * w) + (1.0 + t * w).powi(2)).sqrt();
    assert_close(near.at_most, expected, 3.0 * SIX_DECIMALS);
}

#[test]
fn planned_intervals_are_narrower_than_all_and_wider_than_one() {
    let mean = group("round").mean_estimate().unwrap();
    let reach = |family| {
        let along = mean.along(Vector2::new(1.0, 2.0), family, Level::P95).unwrap();
        along.interval.upper - along.value
    };
    let [one, two, all] =
        [Family::Planned(1), Family::Planned(2), Family::AllDirections].map(reach);
    assert!(one < two && two < all, "{one} {two} {all}");
    // t(0.9875; 11) over t(0.975; 11), from any table: 2.593093/2.200985.
    assert_close(two / one, 2.593_093 / 2.200_985, SIX_DECIMALS);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn moved_turned_and_stretched_means(
        given in proptest::collection::vec((-20.0..20.0_f64, -20.0..20.0_f64), 12),
        (shift, turn, factor) in (-500.0..500.0_f64, 0.0..6.0_f64, 0.1..10.0_f64),
    ) {
        let turned = |p: &Vector2<f64>| factor * (Rotation2::new(turn) * p) + Vector2::new(shift, -shift);
        let halves = [&given[..5], &given[5..]].map(sample);
        let moved = halves.clone().map(|half| {
            PlanarSample::new(half.points().iter().rev().map(turned).collect()).unwrap()
        });
        for difference in [PlanarSample::pooled_difference, PlanarSample::unequal_difference] {
            let [plain, other] = [&halves, &moved].map(|[a, b]| difference(a, b).unwrap());
            let [p, q] = [plain, other].map(|estimate| estimate.test(Vector2::zeros()));
            prop_assert!((p.statistic - q.statistic).abs() <= 1e-7 * p.statistic);
            let freedom = (plain.degrees_of_freedom, other.degrees_of_freedom);
            prop_assert!((freedom.0 - freedom.1).abs() <= 1e-7);
            prop_assert!((4.0 - 1e-9..=10.0 + 1e-9).contains(&freedom.0));
            let [near, far] = [plain, other].map(|estimate| estimate.distance(Level::P95).unwrap());
            prop_assert!((factor * near.at_most - far.at_most).abs() <= 1e-8 * far.at_most);
            prop_assert!(near.at_most >= near.distance);
        }
    }

    /// No direction reaches farther than the bound, and the farthest of many comes near it.
    #[test]
    fn the_distance_is_the_farthest_of_all_directions(
        (x, y) in (-5.0..5.0_f64, -5.0..5.0_f64),
        (long, short, turn) in (0.1..4.0_f64, 0.01..4.0_f64, 0.0..3.2_f64),
    ) {
        let turned = Rotation2::new(turn).into_inner();
        let covariance = turned * Matrix2::new(long * long, 0.0, 0.0, short * short) * turned.transpose();
        let estimate = PlanarEstimate { value: Vector2::new(x, y), covariance, degrees_of_freedom: 9.0, n: 10 };
        let bound = estimate.distance(Level::P95).unwrap().at_most;
        let reach = |at: i32| {
            let angle = f64::from(at) * std::f64::consts::TAU / 720.0;
            let direction = Vector2::new(angle.cos(), angle.sin());
            // A one-sided bound at 95 % is the end of an interval at 90 %.
            estimate.along(direction, Family::Planned(1), Level::P90).unwrap().interval.upper
        };
        let farthest = (0..720).map(reach).fold(0.0, f64::max);
        prop_assert!(farthest <= bound * (1.0 + TWELVE_DIGITS), "{farthest} {bound}");
        prop_assert!(farthest >= bound * (1.0 - 1e-3), "{farthest} {bound}");
    }
}
