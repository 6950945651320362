//! A displacement on the face: from the spot, from the reference, from one hit to another.

use std::ops::{Add, Mul, Neg, Sub};

use crate::{Angle, Millimetres};

/// A displacement on the face in millimetres, x to the right and y up as the archer sees it
/// ([conventions](crate#conventions)).
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Offset {
    /// To the right, mm.
    pub x_mm: f64,
    /// Up, mm.
    pub y_mm: f64,
}

impl Offset {
    /// No displacement.
    pub const ZERO: Self = Self { x_mm: 0.0, y_mm: 0.0 };

    /// A displacement of `x_mm` to the right and `y_mm` up.
    pub const fn new(x_mm: f64, y_mm: f64) -> Self {
        Self { x_mm, y_mm }
    }

    /// A displacement by `length` toward the clock angle `direction` (0 = 12 o'clock, clockwise).
    ///
    /// # Formula
    /// `x = length · sin(direction)`, `y = length · cos(direction)`.
    pub fn toward(direction: Angle, length: Millimetres) -> Self {
        let (sin, cos) = direction.sin_cos();
        Self::new(length.mm() * sin, length.mm() * cos)
    }

    /// Its length, √(x² + y²).
    pub fn length(self) -> Millimetres {
        Millimetres::new(self.x_mm.hypot(self.y_mm))
    }

    /// Its clock angle in [0, 2π): 0 = 12 o'clock, clockwise; 0 where there is no displacement.
    pub fn clock_angle(self) -> Angle {
        Angle::from_radians(self.x_mm.atan2(self.y_mm)).positive()
    }

    /// The displacement turned **counter-clockwise** as the archer sees it.
    ///
    /// What is fixed to a shaft turns with its mark, so from the mark at 12 o'clock to the mark at
    /// `index` it is `rotated(-index.angle())`.
    ///
    /// # Formula
    /// With α the angle: `x' = x cos α − y sin α`, `y' = x sin α + y cos α`.
    #[must_use]
    pub fn rotated(self, counter_clockwise: Angle) -> Self {
        let (sin, cos) = counter_clockwise.sin_cos();
        Self::new(cos * self.x_mm - sin * self.y_mm, sin * self.x_mm + cos * self.y_mm)
    }
}

impl Add for Offset {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::new(self.x_mm + other.x_mm, self.y_mm + other.y_mm)
    }
}

impl Sub for Offset {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::new(self.x_mm - other.x_mm, self.y_mm - other.y_mm)
    }
}

impl Neg for Offset {
    type Output = Self;
    fn neg(self) -> Self {
        Self::new(-self.x_mm, -self.y_mm)
    }
}

impl Mul<f64> for Offset {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self::new(self.x_mm * factor, self.y_mm * factor)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use serde_json::Value;

    use super::*;
    use crate::Index;
    use crate::tolerance::{ROUNDING, assert_within};

    #[track_caller]
    fn assert_same(actual: Offset, expected: Offset, allowed_mm: f64) {
        assert_within(actual.x_mm, expected.x_mm, allowed_mm);
        assert_within(actual.y_mm, expected.y_mm, allowed_mm);
    }

    fn offset() -> impl Strategy<Value = Offset> {
        (-3000.0..3000.0, -3000.0..3000.0).prop_map(|(x_mm, y_mm)| Offset::new(x_mm, y_mm))
    }

    fn angle() -> impl Strategy<Value = Angle> {
        (-720.0..720.0).prop_map(Angle::from_degrees)
    }

    /// Source: scipy 1.17.1, `spatial.transform.Rotation`; `fixtures/geometry/make_rotations.py`.
    #[test]
    fn rotations_agree_with_scipy() {
        let fixture: Value =
            serde_json::from_str(include_str!("../../../fixtures/geometry/rotations.json"))
                .unwrap();
        let vector = |v: &Value| Offset::new(v[0].as_f64().unwrap(), v[1].as_f64().unwrap());
        let start = vector(&fixture["vector"]);
        let cases = fixture["cases"].as_array().unwrap();
        assert_eq!(cases.len(), 7);
        for case in cases {
            let turn = Angle::from_degrees(case["counter_clockwise_deg"].as_f64().unwrap());
            let expected = vector(&case["rotated"]);
            assert_same(start.rotated(turn), expected, ROUNDING * start.length().mm());
        }
    }

    #[test]
    fn the_quarters_of_the_clock() {
        let quarters = [(0.0, 1.0), (1.0, 0.0), (0.0, -1.0), (-1.0, 0.0)];
        for ((x_mm, y_mm), hour) in quarters.into_iter().zip([0.0, 3.0, 6.0, 9.0]) {
            assert_eq!(Offset::new(x_mm, y_mm).clock_angle(), Index::from_hour(hour).angle());
        }
        assert_eq!(Offset::ZERO.clock_angle(), Angle::ZERO);
    }

    #[test]
    fn what_is_fixed_to_the_shaft_goes_round_with_its_mark() {
        let at_twelve = Offset::toward(Index::from_hour(1.0).angle(), Millimetres::new(20.0));
        let at_four = at_twelve.rotated(-Index::from_hour(4.0).angle());
        let expected = Offset::toward(Index::from_hour(5.0).angle(), Millimetres::new(20.0));
        assert_same(at_four, expected, 20.0 * ROUNDING);
    }

    proptest! {
        #[test]
        fn a_rotation_keeps_the_length(offset in offset(), turn in angle()) {
            let length = offset.length().mm();
            assert_within(offset.rotated(turn).length().mm(), length, length * ROUNDING);
        }

        #[test]
        fn rotations_compose(offset in offset(), first in angle(), second in angle()) {
            let allowed_mm = offset.length().mm() * ROUNDING;
            assert_same(offset.rotated(first).rotated(second), offset.rotated(first + second), allowed_mm);
            assert_same(offset.rotated(first).rotated(-first), offset, allowed_mm);
        }

        #[test]
        fn direction_and_length_say_it_all(offset in offset()) {
            let again = Offset::toward(offset.clock_angle(), offset.length());
            assert_same(again, offset, offset.length().mm() * ROUNDING);
        }
    }
}
