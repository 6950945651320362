//! Where a shaft in the butt points in space.

use nalgebra::{Rotation3, UnitVector3, Vector3};

use crate::{Angle, Lean};

/// The direction from the hole to the tail: x to the right, y up, z out of the face toward the archer.
///
/// A [`Lean`] is the same thing in two angles, asin x and asin y.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShaftDirection(UnitVector3<f64>);

impl ShaftDirection {
    /// Straight out of the face.
    pub fn straight() -> Self {
        Self(Vector3::z_axis())
    }

    /// The way from a hole to a tail that is so far to the right, up and toward the archer; `None` where that is nowhere or
    /// not before the face.
    pub(crate) fn of_tail(tail: Vector3<f64>) -> Option<Self> {
        UnitVector3::try_new(tail, 0.0).filter(|way| way.z > 0.0).map(Self)
    }

    /// To the right, up, and toward the archer; the squares sum to 1.
    pub fn parts(self) -> [f64; 3] {
        [self.0.x, self.0.y, self.0.z]
    }

    /// The angle between two shafts.
    pub fn angle_to(self, other: Self) -> Angle {
        let cross = self.0.cross(&other.0).norm();
        Angle::from_radians(cross.atan2(self.0.dot(&other.0)))
    }

    /// This direction in the frame in which `reference` is straight.
    ///
    /// # Formula
    /// The rotation that takes `reference` to z about the axis square to both: no turn about the shaft itself. Two
    /// shafts that point opposite ways have no such frame, which no butt shows; then it is this direction as it is.
    #[must_use]
    pub fn relative_to(self, reference: Self) -> Self {
        let z = Vector3::z();
        let cross = reference.0.cross(&z);
        let angle = cross.norm().atan2(reference.0.z);
        let turn = UnitVector3::try_new(cross, 0.0)
            .map_or_else(Rotation3::identity, |axis| Rotation3::from_axis_angle(&axis, angle));
        Self(turn * self.0)
    }

    /// The direction as it is seen from a frame turned by `up` about x, as a face whose top leans back shows it, or a
    /// stand above the butt, and then by `right` about y.
    #[must_use]
    pub fn seen_from(self, right: Angle, up: Angle) -> Self {
        let pitch = Rotation3::from_axis_angle(&Vector3::x_axis(), up.radians());
        let yaw = Rotation3::from_axis_angle(&Vector3::y_axis(), -right.radians());
        Self(yaw * pitch * self.0)
    }
}

impl From<Lean> for ShaftDirection {
    /// For a lean of which no part is beyond a right angle and both together lie before the face, as all of
    /// [`Lean::from_tail`] do; beyond that the direction lies in the face.
    fn from(lean: Lean) -> Self {
        let [x, y] = [lean.x, lean.y].map(|part| part.radians().sin());
        let toward = (1.0 - x * x - y * y).max(0.0).sqrt();
        Self(UnitVector3::new_normalize(Vector3::new(x, y, toward)))
    }
}

impl From<ShaftDirection> for Lean {
    fn from(direction: ShaftDirection) -> Self {
        let [x, y, _] =
            direction.parts().map(|part| Angle::from_radians(part.clamp(-1.0, 1.0).asin()));
        Self { x, y }
    }
}

impl Lean {
    /// The lean relative to another arrow's, both read in one frame: what would be read where the other stands
    /// straight, however the face is tilted and from whatever height it is shot at.
    ///
    /// # Formula
    /// [`ShaftDirection::relative_to`]. For small leans it is the difference of both parts.
    ///
    /// # Example
    /// ```
    /// use quarterturn_geometry::Lean;
    ///
    /// // From a stand above the butt all tails are high, and still the bare shaft leans to the right only.
    /// let (bare, reference) = (Lean::from_degrees(3.0, 9.0), Lean::from_degrees(0.0, 9.0));
    /// let lean = bare.relative_to(reference);
    /// assert_eq!(format!("{:.1} {:.1}", lean.x.degrees(), lean.y.degrees()), "3.0 0.0");
    /// ```
    #[must_use]
    pub fn relative_to(self, reference: Self) -> Self {
        ShaftDirection::from(self).relative_to(reference.into()).into()
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use serde_json::Value;

    use super::*;
    use crate::tolerance::{RELATIVE_LEAN_DEG, ROTATED, ROUNDING, TWO_DECIMALS, assert_within};
    use crate::{Millimetres, Offset};

    /// Source: scipy 1.17.1, `spatial.transform.Rotation`; `fixtures/geometry/make_leans.py`.
    #[test]
    fn leans_agree_with_scipy() {
        let fixture: Value =
            serde_json::from_str(include_str!("../../../fixtures/geometry/leans.json")).unwrap();
        let cases = fixture["cases"].as_array().unwrap();
        assert_eq!(cases.len(), 12);
        for case in cases {
            let pair = |name: &str| [0, 1].map(|i| case[name][i].as_f64().unwrap());
            let lean = |[x, y]: [f64; 2]| Lean::from_degrees(x, y);
            let seen = lean(pair("bare_deg")).relative_to(lean(pair("reference_deg")));
            let [x, y] = pair("relative_deg");
            assert_within(seen.x.degrees(), x, 90.0 * ROUNDING);
            assert_within(seen.y.degrees(), y, 90.0 * ROUNDING);
        }
    }

    /// The example that docs/methods.md works by hand.
    #[test]
    fn a_tail_left_and_high() {
        let tail = Offset::new(-20.0, 10.0);
        let lean = Lean::from_tail(tail, Millimetres::new(600.0)).unwrap();
        let [x, y, z] = ShaftDirection::from(lean).parts();
        for (part, expected) in [(x, -0.033_333), (y, 0.016_667), (z, 0.999_305)] {
            assert_within(part, expected, 1e-6);
        }
        assert_within(lean.size().degrees(), 2.14, TWO_DECIMALS);
        assert_within(lean.clock_angle().degrees(), 296.57, TWO_DECIMALS);
    }

    #[test]
    fn the_other_way_and_straight() {
        let straight = ShaftDirection::straight();
        let lean = Lean::from_degrees(4.0, -7.0);
        let same: Lean = ShaftDirection::from(lean).relative_to(straight).into();
        assert_within(same.x.degrees(), 4.0, 4.0 * ROUNDING);
        assert_within(same.y.degrees(), -7.0, 7.0 * ROUNDING);
        let behind = straight.seen_from(Angle::ZERO, Angle::from_degrees(180.0));
        let [x, y, z] = straight.relative_to(behind).parts();
        assert!([x, y, z].iter().all(|part| part.is_finite()));
    }

    fn lean() -> impl Strategy<Value = Lean> {
        (-8.0..8.0, -8.0..8.0).prop_map(|(x, y)| Lean::from_degrees(x, y))
    }

    proptest! {
        #[test]
        fn a_lean_comes_back(lean in lean()) {
            let again = Lean::from(ShaftDirection::from(lean));
            assert_within(again.x.degrees(), lean.x.degrees(), 90.0 * ROUNDING);
            assert_within(again.y.degrees(), lean.y.degrees(), 90.0 * ROUNDING);
        }

        #[test]
        fn the_reference_is_straight_and_the_angle_kept(bare in lean(), reference in lean()) {
            let none = reference.relative_to(reference);
            assert_within(none.x.degrees().hypot(none.y.degrees()), 0.0, 90.0 * ROTATED);
            let [bare, reference] = [bare, reference].map(ShaftDirection::from);
            let apart = bare.relative_to(reference).angle_to(ShaftDirection::straight());
            assert_within(apart.radians(), bare.angle_to(reference).radians(), ROTATED);
        }

        /// However a face is tilted, and from whatever height: one relative lean.
        #[test]
        fn tilt_and_height_do_not_matter(
            bare in lean(), miss in (-3.0..3.0, -3.0..3.0), (right, up) in (-10.0..10.0, -20.0..20.0),
        ) {
            let reference = Lean::from_degrees(bare.x.degrees() + miss.0, bare.y.degrees() + miss.1);
            let plain = bare.relative_to(reference);
            let tilted = |lean: Lean| -> Lean {
                let turned = [right, up].map(Angle::from_degrees);
                ShaftDirection::from(lean).seen_from(turned[0], turned[1]).into()
            };
            let seen = tilted(bare).relative_to(tilted(reference));
            assert_within(seen.x.degrees(), plain.x.degrees(), RELATIVE_LEAN_DEG);
            assert_within(seen.y.degrees(), plain.y.degrees(), RELATIVE_LEAN_DEG);
        }

        /// From tail and length to space and back.
        #[test]
        fn a_tail_has_its_direction(x_mm in -300.0..300.0, y_mm in -300.0..300.0) {
            let lean = Lean::from_tail(Offset::new(x_mm, y_mm), Millimetres::new(600.0)).unwrap();
            let [x, y, z] = ShaftDirection::from(lean).parts();
            assert_within(x, x_mm / 600.0, ROUNDING);
            assert_within(y, y_mm / 600.0, ROUNDING);
            assert_within(x * x + y * y + z * z, 1.0, ROUNDING);
        }
    }
}
