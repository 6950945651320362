//! Ellipses against eigendecompositions, a textbook and their own definition.

use proptest::prelude::*;
use serde_json::Value;

use super::*;
use crate::tolerance::{AXIS_RADIANS, MAHALANOBIS, ROUNDING, TWO_DECIMALS, assert_within};
use crate::wrap;

fn symmetric(xx: f64, xy: f64, yy: f64) -> Matrix2<f64> {
    Matrix2::new(xx, xy, xy, yy)
}

fn refusal(covariance_mm2: Matrix2<f64>, radius: f64) -> GeometryError {
    Ellipse::new(Point::SPOT, &covariance_mm2, radius).unwrap_err()
}

/// Source: numpy 2.4.6 `linalg.eigh`, mpmath 1.4.1 `eigsy`; `fixtures/geometry/make_ellipses.py`.
#[test]
fn axes_agree_with_numpy_and_mpmath() {
    let fixture: Value =
        serde_json::from_str(include_str!("../../../../fixtures/geometry/ellipses.json")).unwrap();
    let cases = fixture["cases"].as_array().unwrap();
    assert_eq!(cases.len(), 13);
    for case in cases {
        let number = |name: &str| case[name].as_f64().unwrap();
        let [xx, xy, yy, radius] = ["xx", "xy", "yy", "radius"].map(number);
        let ellipse = Ellipse::new(Point::SPOT, &symmetric(xx, xy, yy), radius).unwrap();

        let (major, minor) = (number("semi_major"), number("semi_minor"));
        assert_within(ellipse.semi_major().mm(), major, major * ROUNDING);
        // Half the rounding of the smaller variance, taken through the square root.
        let allowed = minor * ROUNDING + ROUNDING * radius * radius * (xx.min(yy) / minor);
        assert_within(ellipse.semi_minor().mm(), minor, allowed);
        let off = (ellipse.orientation() - Angle::from_degrees(number("clock_deg"))).radians();
        assert_within(wrap::signed(off, std::f64::consts::PI), 0.0, AXIS_RADIANS);
    }
}

/// Source: Johnson and Wichern, *Applied Multivariate Statistical Analysis*, example 6.3 (two
/// soaps): pooled covariance [2 1; 1 5], c² = 6.25, n = 50 and 50; half-axes 1.15 and 0.65, longer
/// one along (0.290, 0.957). The printed figures are from memory.
#[test]
fn a_textbook_confidence_ellipse() {
    let radius = ((1.0 / 50.0 + 1.0 / 50.0) * 6.25_f64).sqrt();
    let ellipse = Ellipse::new(Point::SPOT, &symmetric(2.0, 1.0, 5.0), radius).unwrap();
    assert_within(ellipse.semi_major().mm(), 1.15, TWO_DECIMALS);
    assert_within(ellipse.semi_minor().mm(), 0.65, TWO_DECIMALS);
    let axis = Offset::toward(ellipse.orientation(), Millimetres::new(1.0));
    assert_within(axis.x_mm, 0.29, TWO_DECIMALS);
    assert_within(axis.y_mm, 0.96, TWO_DECIMALS);
}

#[test]
fn a_circle_has_no_orientation_to_speak_of() {
    let circle = Ellipse::new(Point::SPOT, &symmetric(25.0, 0.0, 25.0), 2.0).unwrap();
    assert_eq!(
        (circle.semi_major(), circle.semi_minor()),
        (Millimetres::new(10.0), Millimetres::new(10.0))
    );
    assert_eq!(circle.orientation(), Angle::ZERO);
}

#[test]
fn a_line_is_an_ellipse_without_width() {
    let line = Ellipse::new(Point::SPOT, &symmetric(0.0, 0.0, 100.0), 1.0).unwrap();
    assert_eq!(line.semi_minor(), Millimetres::ZERO);
    assert!(line.contains(Point::new(0.0, -10.0)));
    assert!(!line.contains(Point::new(0.0, 10.1)));
    assert!(!line.contains(Point::new(0.001, 0.0)));
}

#[test]
fn a_point_contains_itself_only() {
    for (variance_mm2, radius) in [(0.0, 2.0), (100.0, 0.0)] {
        let covariance_mm2 = symmetric(variance_mm2, 0.0, variance_mm2);
        let centre = Point::new(12.0, 5.0);
        let point = Ellipse::new(centre, &covariance_mm2, radius).unwrap();
        assert!(point.contains(centre));
        assert!(!point.contains(Point::new(12.0, 5.001)));
    }
}

#[test]
fn rounding_is_forgiven() {
    let almost = Matrix2::new(100.0, 100.0, 100.0 + 1e-8, 100.0 - 1e-8);
    let ellipse = Ellipse::new(Point::SPOT, &almost, 1.0).unwrap();
    assert_eq!(ellipse.semi_minor(), Millimetres::ZERO);
}

#[test]
fn what_is_no_covariance_is_refused() {
    assert!(matches!(refusal(symmetric(1.0, f64::NAN, 1.0), 1.0), GeometryError::NotFinite { .. }));
    assert!(matches!(
        refusal(symmetric(f64::INFINITY, 0.0, 1.0), 1.0),
        GeometryError::NotFinite { .. }
    ));
    let asymmetric = refusal(Matrix2::new(4.0, 1.0, 2.0, 4.0), 1.0);
    assert_eq!(asymmetric, GeometryError::Asymmetric { xy_mm2: 1.0, yx_mm2: 2.0 });
    assert_eq!(
        refusal(symmetric(1.0, 2.0, 1.0), 1.0),
        GeometryError::Indefinite { variance_mm2: -1.0 }
    );
    assert_eq!(
        refusal(symmetric(0.0, 0.0, -1.0), 1.0),
        GeometryError::Indefinite { variance_mm2: -1.0 }
    );
    assert_eq!(
        refusal(symmetric(-2.0, 0.0, -1.0), 1.0),
        GeometryError::Indefinite { variance_mm2: -2.0 }
    );
}

#[test]
fn a_radius_is_finite_and_not_negative() {
    for radius in [-1.0, f64::NAN, f64::INFINITY] {
        assert!(matches!(refusal(Matrix2::identity(), radius), GeometryError::Radius { .. }));
    }
}

/// Covariances of groups from 1 to 100 mm wide in any direction.
fn covariance() -> impl Strategy<Value = Matrix2<f64>> {
    (1.0..100.0, 1.0..100.0, 0.0..std::f64::consts::PI).prop_map(
        |(along, across, turn): (f64, f64, f64)| {
            let (sin, cos) = turn.sin_cos();
            let (a, b) = (along * along, across * across);
            let xy = (a - b) * sin * cos;
            symmetric(a * cos * cos + b * sin * sin, xy, a * sin * sin + b * cos * cos)
        },
    )
}

proptest! {
    #[test]
    fn the_boundary_lies_on_the_mahalanobis_radius(
        covariance_mm2 in covariance(), radius in 0.1..5.0, x_mm in -500.0..500.0,
    ) {
        let centre = Point::new(x_mm, -x_mm);
        let ellipse = Ellipse::new(centre, &covariance_mm2, radius).unwrap();
        let inverse = covariance_mm2.try_inverse().unwrap();
        let boundary: Vec<_> = ellipse.boundary(24).collect();
        prop_assert_eq!(boundary.len(), 24);
        for point in boundary {
            let offset = point - centre;
            let from_centre = nalgebra::Vector2::new(offset.x_mm, offset.y_mm);
            let distance = from_centre.dot(&(inverse * from_centre)).sqrt();
            assert_within(distance, radius, radius * MAHALANOBIS);
        }
    }

    #[test]
    fn what_lies_within_the_boundary_is_contained(
        covariance_mm2 in covariance(), radius in 0.1..5.0, k in 0_usize..360,
    ) {
        let centre = Point::new(12.0, 5.0);
        let ellipse = Ellipse::new(centre, &covariance_mm2, radius).unwrap();
        let edge = ellipse.boundary(360).nth(k).unwrap() - centre;
        prop_assert!(ellipse.contains(centre + edge * 0.999));
        prop_assert!(!ellipse.contains(centre + edge * 1.001));
    }

    #[test]
    fn the_boundary_begins_at_an_end_of_the_longest_way_and_runs_clockwise(
        covariance_mm2 in covariance(),
    ) {
        let ellipse = Ellipse::new(Point::SPOT, &covariance_mm2, 1.0).unwrap();
        let quarters: Vec<_> = ellipse.boundary(4).map(Point::from_spot).collect();
        let end = Offset::toward(ellipse.orientation(), ellipse.semi_major());
        let side = end.rotated(Angle::from_degrees(-90.0)) * (ellipse.semi_minor() / ellipse.semi_major());
        let allowed_mm = end.length().mm() * ROUNDING;
        for (quarter, expected) in quarters.into_iter().zip([end, side, -end, -side]) {
            assert_within((quarter - expected).length().mm(), 0.0, allowed_mm);
        }
    }
}
