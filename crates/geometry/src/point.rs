//! A position on the face; two positions are never added.

use std::ops::{Add, Sub};

use crate::Offset;

/// A position on the face in millimetres from the spot aimed at, x to the right and y up as the
/// archer sees it ([conventions](crate#conventions)).
///
/// Point − Point is an [`Offset`], Point + Offset is a Point; Point + Point does not compile:
///
/// ```compile_fail,E0308
/// use quarterturn_geometry::Point;
///
/// let nonsense = Point::new(12.0, 5.0) + Point::new(3.0, -4.0);
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Point {
    /// To the right of the spot, mm.
    pub x_mm: f64,
    /// Above the spot, mm.
    pub y_mm: f64,
}

impl Point {
    /// The spot aimed at.
    pub const SPOT: Self = Self { x_mm: 0.0, y_mm: 0.0 };

    /// The position `x_mm` to the right of the spot and `y_mm` above it.
    pub const fn new(x_mm: f64, y_mm: f64) -> Self {
        Self { x_mm, y_mm }
    }

    /// How far and where from the spot.
    pub fn from_spot(self) -> Offset {
        self - Self::SPOT
    }
}

impl Sub for Point {
    type Output = Offset;
    fn sub(self, other: Self) -> Offset {
        Offset::new(self.x_mm - other.x_mm, self.y_mm - other.y_mm)
    }
}

impl Add<Offset> for Point {
    type Output = Self;
    fn add(self, by: Offset) -> Self {
        Self::new(self.x_mm + by.x_mm, self.y_mm + by.y_mm)
    }
}
