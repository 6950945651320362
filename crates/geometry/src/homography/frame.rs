//! Coordinates moved to the origin and stretched to a common size, in which nothing large meets anything small.

use std::f64::consts::SQRT_2;

use nalgebra::{Matrix3, Vector2};

/// Inside = (outside − centre) · scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Frame {
    centre: Vector2<f64>,
    pub(super) scale: f64,
}

impl Frame {
    /// The frame in which `places`, not all the same, have their mean at the origin and a mean distance of √2 from it.
    pub(super) fn of(places: impl ExactSizeIterator<Item = Vector2<f64>> + Clone) -> Self {
        let count = places.len() as f64;
        let centre = places.clone().sum::<Vector2<f64>>() / count;
        let distance = places.map(|place| (place - centre).norm()).sum::<f64>() / count;
        Self { centre, scale: SQRT_2 / distance }
    }

    pub(super) fn inside(&self, outside: Vector2<f64>) -> Vector2<f64> {
        (outside - self.centre) * self.scale
    }

    pub(super) fn outside(&self, inside: Vector2<f64>) -> Vector2<f64> {
        inside / self.scale + self.centre
    }

    pub(super) fn inward(&self) -> Matrix3<f64> {
        let (scale, moved) = (self.scale, self.centre * -self.scale);
        Matrix3::new(scale, 0.0, moved.x, 0.0, scale, moved.y, 0.0, 0.0, 1.0)
    }

    pub(super) fn outward(&self) -> Matrix3<f64> {
        let (size, centre) = (self.scale.recip(), self.centre);
        Matrix3::new(size, 0.0, centre.x, 0.0, size, centre.y, 0.0, 0.0, 1.0)
    }
}
