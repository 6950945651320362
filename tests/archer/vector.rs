//! A displacement on the face in mm, or a lean in degrees: x to the right, y up.

use std::ops::{Add, Mul, Sub};

/// A displacement as the archer sees it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Vector {
    pub x: f64,
    pub y: f64,
}

impl Vector {
    pub fn length(self) -> f64 {
        self.x.hypot(self.y)
    }

    /// The same vector turned clockwise, which is how the clock of the face counts.
    pub fn clockwise(self, degrees: f64) -> Self {
        let (sin, cos) = degrees.to_radians().sin_cos();
        Self { x: self.x * cos + self.y * sin, y: self.y * cos - self.x * sin }
    }
}

impl From<[f64; 2]> for Vector {
    fn from([x, y]: [f64; 2]) -> Self {
        Self { x, y }
    }
}

impl Add for Vector {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self { x: self.x + other.x, y: self.y + other.y }
    }
}

impl Sub for Vector {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self { x: self.x - other.x, y: self.y - other.y }
    }
}

impl Mul<f64> for Vector {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self { x: self.x * factor, y: self.y * factor }
    }
}

#[test]
fn up_turned_clockwise_by_a_quarter_points_right() {
    let turned = Vector { x: 0.0, y: 10.0 }.clockwise(90.0);
    assert!((turned - Vector { x: 10.0, y: 0.0 }).length() < 1e-12, "{turned:?}");
}
