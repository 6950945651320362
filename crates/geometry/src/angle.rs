//! An angle, free of any direction of its own: what it turns is said where it is used.

use std::f64::consts::{PI, TAU};
use std::ops::{Add, Mul, Neg, Sub};

/// An angle in radians.
///
/// Which way it turns is the business of the function that takes it: clock angles run clockwise from
/// 12 o'clock as the archer sees them, [`Offset::rotated`](crate::Offset::rotated) turns counter-clockwise.
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
    pub fn from_degrees(degrees: f64) -> Self {
        Self(degrees.to_radians())
    }

    /// The angle in radians.
    pub const fn radians(self) -> f64 {
        self.0
    }

    /// The angle in degrees.
    pub fn degrees(self) -> f64 {
        self.0.to_degrees()
    }

    /// The same direction in [0, 2π).
    pub fn positive(self) -> Self {
        let turned = self.0.rem_euclid(TAU);
        // A tiny negative angle rounds up to a whole turn.
        Self(if turned < TAU { turned } else { 0.0 })
    }

    /// The same direction in (−π, π].
    pub fn signed(self) -> Self {
        let turned = self.positive().0;
        Self(if turned > PI { turned - TAU } else { turned })
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
