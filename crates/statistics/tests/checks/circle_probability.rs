//! The probability of a circle against tables, closed forms, 34 digits and its own symmetries.

use nalgebra::{Matrix2, Rotation2, Vector2};
use proptest::prelude::{ProptestConfig, prop_assert, proptest};
use quarterturn_statistics::distributions::{NoncentralChiSquared, normal};
use quarterturn_statistics::{approximate_probability_within_circle, probability_within_circle};

use crate::fixture::Fixture;
use crate::tolerance::{
    CIRCLE, DISTRIBUTION, FLAT_CIRCLE, QUICK_CIRCLE, SEVEN_DECIMALS, SIX_DECIMALS, TEN_DECIMALS,
    assert_close,
};

fn along_axes(sd_x: f64, sd_y: f64) -> Matrix2<f64> {
    Matrix2::from_diagonal(&Vector2::new(sd_x * sd_x, sd_y * sd_y))
}

// Source: noncentral chi-squared and polar quadrature (fixtures/statistics/README.md); 1 − e⁻² for an 8 in plate and a
// standard deviation of 2 in.
#[test]
fn round_and_offset() {
    for cell in Fixture::read("circle_offset_table.csv").two_way() {
        let mean = Vector2::new(0.6, -0.8) * cell.column;
        let p = probability_within_circle(mean, &Matrix2::identity(), cell.row);
        assert_close(p, cell.value, TEN_DECIMALS);
    }
    let plate = probability_within_circle(Vector2::zeros(), &along_axes(2.0, 2.0), 4.0);
    assert_close(plate, 0.864_665, SIX_DECIMALS);
}

// Source: closed forms, and noncentral chi-squared for the last, of the middle of targets of 122 cm and 40 cm, the
// latter as it is, wider by a shaft of 9.3 mm, and by one of 5.5 mm about another point than its middle.
#[test]
fn middles_of_targets() {
    for (radius, sd, x, y, expected) in [
        (61.0, 80.0, 0.0, 0.0, 0.252_262_4),
        (20.0, 25.0, 0.0, 0.0, 0.273_851_0),
        (24.65, 25.0, 0.0, 0.0, 0.384_978_5),
        (22.75, 25.0, 15.0, -20.0, 0.226_125_2),
    ] {
        let p = probability_within_circle(Vector2::new(x, y), &along_axes(sd, sd), radius);
        assert_close(p, expected, SEVEN_DECIMALS);
    }
}

// Source: H. L. Harter, 1960, Circular error probabilities, JASA 55 (recomputed).
#[test]
fn centred_ellipses() {
    for cell in Fixture::read("harter_table.csv").two_way() {
        let covariance = along_axes(1.0, cell.column);
        let p = probability_within_circle(Vector2::zeros(), &covariance, cell.row);
        assert_close(p, cell.value, SEVEN_DECIMALS);
    }
    for cell in Fixture::read("elliptical_radius_table.csv").two_way() {
        let covariance = along_axes(cell.row, 1.0);
        let p = probability_within_circle(Vector2::zeros(), &covariance, cell.value);
        // A radius off by the rounding of its sixth decimal moves the probability by less than that.
        assert_close(p, cell.column, SIX_DECIMALS);
    }
}

// Source: 25-digit quadrature confirmed by simulation (fixtures/statistics/README.md).
#[test]
fn offset_ellipses() {
    for row in Fixture::read("offset_ellipse_table.csv").numbers() {
        let (mean, covariance) = (Vector2::new(row[3], row[4]), along_axes(row[1], row[2]));
        assert_close(probability_within_circle(mean, &covariance, row[0]), row[5], CIRCLE);
    }
}

// Source: mpmath, 34 digits, fixtures/statistics/make_circles.py.
#[test]
fn any_shape_in_thirty_four_digits() {
    for row in &Fixture::read("circles.csv").rows {
        let n: Vec<f64> = row[1..].iter().map(|cell| cell.parse().unwrap()).collect();
        let (mean, covariance) = (Vector2::new(n[1], n[2]), Matrix2::new(n[3], n[4], n[4], n[5]));
        assert_close(probability_within_circle(mean, &covariance, n[0]), n[6], CIRCLE);
        let quick = approximate_probability_within_circle(mean, &covariance, n[0]);
        assert_close(quick, n[6], QUICK_CIRCLE);
    }
}

#[test]
fn the_quick_form_over_a_wide_grid() {
    let mut cases = 0;
    for sd in [0.05, 0.07, 0.1, 0.15, 0.2, 0.3, 0.5, 0.7, 1.0, 1.5, 2.0, 3.0] {
        for ratio in [1.0, 1.3, 2.0, 3.0, 5.0] {
            let covariance = along_axes(sd, sd / ratio);
            for (offset, turn) in (0..=40).flat_map(|o| (0..7).map(move |t| (o, t))) {
                let angle_rad = f64::from(turn) * 0.25;
                let mean = Vector2::new(angle_rad.cos(), angle_rad.sin()) * f64::from(offset) * 0.1;
                let quick = approximate_probability_within_circle(mean, &covariance, 1.0);
                let p = probability_within_circle(mean, &covariance, 1.0);
                assert_close(quick, p, QUICK_CIRCLE);
                cases += 1;
            }
        }
    }
    assert_eq!(cases, 12 * 5 * 41 * 7);
}

#[test]
fn flat_distributions_have_their_limits() {
    let mean = Vector2::new(0.3, 0.6);
    let point = |radius| probability_within_circle(mean, &Matrix2::zeros(), radius);
    let bits = [0.0, 0.67, mean.norm(), 0.68].map(|radius| point(radius).to_bits());
    assert_eq!(bits, [0.0_f64, 0.0, 1.0, 1.0].map(f64::to_bits));

    // All on the line y = 0.6, which the unit circle crosses at ±0.8.
    let line = |covariance: &Matrix2<f64>| probability_within_circle(mean, covariance, 1.0);
    let chord = normal::between((-0.8 - 0.3) / 0.5, (0.8 - 0.3) / 0.5);
    assert_close(line(&along_axes(0.5, 0.0)), chord, CIRCLE);
    assert_close(line(&along_axes(0.5, 1e-7)), chord, FLAT_CIRCLE);
    let beside = probability_within_circle(Vector2::new(0.0, 1.1), &along_axes(0.5, 0.0), 1.0);
    assert_close(beside, 0.0, 0.0);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_round_cloud_is_noncentral_chi_squared(offset in 0.0..30.0, radius in 0.01..40.0, turn in 0.0..6.3) {
        let mean = Rotation2::new(turn) * Vector2::new(offset, 0.0);
        let expected = NoncentralChiSquared::new(2.0, offset * offset).unwrap().cdf(radius * radius);
        let p = probability_within_circle(mean, &Matrix2::identity(), radius);
        prop_assert!((p - expected).abs() <= DISTRIBUTION, "{p} {expected}");
    }

    #[test]
    fn turning_everything_changes_nothing(
        (x, y) in (-3.0..3.0, -3.0..3.0),
        (sd, ratio) in (0.03..3.0, 0.01..1.0),
        turn in 0.0..6.3,
    ) {
        let (mean, covariance) = (Vector2::new(x, y), along_axes(sd, sd * ratio));
        let rotation = Rotation2::new(turn);
        let turned = rotation.matrix() * covariance * rotation.matrix().transpose();
        let p = probability_within_circle(mean, &covariance, 1.0);
        let q = probability_within_circle(rotation * mean, &turned, 1.0);
        prop_assert!((p - q).abs() <= CIRCLE, "{p} {q}");
    }

    #[test]
    fn a_larger_circle_holds_more(
        (x, y) in (-3.0..3.0, -3.0..3.0),
        (sd_x, sd_y) in (0.001..3.0, 0.001..3.0),
        (radius, more) in (0.0..4.0, 0.0..1.0),
    ) {
        let (mean, covariance) = (Vector2::new(x, y), along_axes(sd_x, sd_y));
        let p = probability_within_circle(mean, &covariance, radius);
        let q = probability_within_circle(mean, &covariance, radius + more);
        prop_assert!((0.0..=1.0).contains(&p) && p <= q + CIRCLE, "{p} {q}");
    }
}
