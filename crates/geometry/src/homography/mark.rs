//! A place on the face that is found again in a picture.

use nalgebra::Vector2;

use crate::Point;

/// A place in a picture: x to the right and y **down**, as pictures are counted, from any corner or other pixel.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Pixel {
    /// To the right, px.
    pub x_px: f64,
    /// Down, px.
    pub y_px: f64,
}

impl Pixel {
    /// The place `x_px` to the right and `y_px` down.
    pub const fn new(x_px: f64, y_px: f64) -> Self {
        Self { x_px, y_px }
    }

    pub(crate) fn vector(self) -> Vector2<f64> {
        Vector2::new(self.x_px, self.y_px)
    }
}

/// A mark: where it stands on the face, and where the picture shows it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mark {
    /// In the picture.
    pub pixel: Pixel,
    /// On the face.
    pub point: Point,
}

impl Point {
    pub(crate) fn vector(self) -> Vector2<f64> {
        Vector2::new(self.x_mm, self.y_mm)
    }
}
