//! A displacement on the face: from the spot, from the reference, from one hit to another.

use std::ops::{Add, Mul, Neg, Sub};

use crate::{Angle, Millimetres};

/// A displacement on the face in millimetres, x to the right and y up as the archer sees it.
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
    pub fn toward(direction: Angle, length: Millimetres) -> Self {
        let (sin, cos) = direction.sin_cos();
        Self::new(length.mm() * sin, length.mm() * cos)
    }

    /// Its length.
    pub fn length(self) -> Millimetres {
        Millimetres::new(self.x_mm.hypot(self.y_mm))
    }

    /// Its clock angle in [0, 2π): 0 = 12 o'clock, clockwise; 0 where there is no displacement.
    pub fn clock_angle(self) -> Angle {
        Angle::from_radians(self.x_mm.atan2(self.y_mm)).positive()
    }

    /// The displacement turned **counter-clockwise** as the archer sees it.
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
