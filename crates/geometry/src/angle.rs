//! An angle, free of any direction of its own: what it turns is said where it is used.

use std::f64::consts::TAU;
use std::ops::{Add, Mul, Neg, Sub};

use crate::wrap;

/// An angle in radians.
///
/// Which way it turns is the business of the function that takes it: clock angles run clockwise
/// from 12 o'clock as the archer sees them, [`Offset::rotated`](crate::Offset::rotated) turns
/// counter-clockwise ([conventions](crate#conventions)).
///
/// Degrees become radians here, so degrees come back to within rounding and not to the last digit;
/// where they must come back as they were said there is [`Index`](crate::Index).
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Angle(f64);

impl Angle {
    /// No turn at all.
    pub const ZERO: Self = Self(0.0);

    /// An angle of `radians`.
    pub const fn from_radians(radians: f64) -> Self {
        Self(radians)
    }

    /// An angle of `degrees`.
    pub const fn from_degrees(degrees: f64) -> Self {
        Self(degrees.to_radians())
    }

    /// The angle in radians.
    pub const fn radians(self) -> f64 {
        self.0
    }

    /// The angle in degrees.
    pub const fn degrees(self) -> f64 {
        self.0.to_degrees()
    }

    /// The same direction in [0, 2π).
    #[must_use]
    pub fn positive(self) -> Self {
        Self(wrap::positive(self.0, TAU))
    }

    /// The same direction in (−π, π].
    #[must_use]
    pub fn signed(self) -> Self {
        Self(wrap::signed(self.0, TAU))
    }

    /// Sine and cosine.
    pub fn sin_cos(self) -> (f64, f64) {
        self.0.sin_cos()
    }
}

impl Add for Angle {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for Angle {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl Neg for Angle {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

impl Mul<f64> for Angle {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self(self.0 * factor)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::tolerance::{ROUNDING, assert_within};

    proptest! {
        #[test]
        fn degrees_come_back_within_rounding(deg in -720.0..720.0) {
            assert_within(Angle::from_degrees(deg).degrees(), deg, deg.abs() * ROUNDING);
        }

        #[test]
        fn the_two_ranges_name_one_direction(radians in -100.0..100.0) {
            let angle = Angle::from_radians(radians);
            let apart = (angle.positive() - angle.signed()).radians();
            let turns = if apart > 1.0 { TAU } else { 0.0 };
            assert_within(apart, turns, TAU * ROUNDING);
        }
    }
}
