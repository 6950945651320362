//! A camera before the face, whose lens bends straight lines.

use nalgebra::{Matrix3, Vector2, Vector3};

/// A pinhole with a lens that moves a pixel at the corner outward by `bend` of its distance from the middle.
#[derive(Clone, Copy, Debug)]
pub struct Camera {
    pub width: usize,
    pub height: usize,
    /// The distance of the picture from the pinhole, px.
    pub focal: f64,
    /// From the face, mm: x right, y up, z toward the archer.
    pub place: Vector3<f64>,
    /// Its rows are the camera's right, down and ahead.
    pub axes: Matrix3<f64>,
    pub bend: f64,
}

impl Camera {
    /// A camera at `place` that looks at `aim`, turned about its own axis.
    pub fn looking(
        [width, height]: [usize; 2],
        focal: f64,
        [place, aim]: [Vector3<f64>; 2],
        roll: f64,
        bend: f64,
    ) -> Self {
        let ahead = (aim - place).normalize();
        let level = ahead.cross(&Vector3::y()).normalize();
        let below = ahead.cross(&level);
        let (sin, cos) = roll.sin_cos();
        let (right, down) = (level * cos + below * sin, below * cos - level * sin);
        let axes = Matrix3::from_rows(&[right.transpose(), down.transpose(), ahead.transpose()]);
        Self { width, height, focal, place, axes, bend }
    }

    fn middle(&self) -> Vector2<f64> {
        Vector2::new(self.width as f64 - 1.0, self.height as f64 - 1.0) / 2.0
    }

    /// Where the picture shows a place; nothing for what is hardly before the camera.
    pub fn pixel(&self, place: Vector3<f64>) -> Option<Vector2<f64>> {
        let seen = self.axes * (place - self.place);
        let flat = Vector2::new(seen.x, seen.y) / seen.z * self.focal;
        let share = flat.norm_squared() / self.middle().norm_squared();
        (seen.z > 60.0).then(|| flat * (1.0 + self.bend * share) + self.middle())
    }

    /// The same of a place on the face.
    pub fn pixel_on_face(&self, x_mm: f64, y_mm: f64) -> Vector2<f64> {
        self.pixel(Vector3::new(x_mm, y_mm, 0.0)).expect("the face is before the camera")
    }

    /// The place on the face that a pixel shows.
    pub fn on_face(&self, pixel: Vector2<f64>) -> Vector2<f64> {
        let bent = pixel - self.middle();
        let mut flat = bent;
        for _ in 0..4 {
            flat = bent / (1.0 + self.bend * flat.norm_squared() / self.middle().norm_squared());
        }
        let ray = self.axes.tr_mul(&Vector3::new(flat.x, flat.y, self.focal));
        let at = self.place - ray * (self.place.z / ray.z);
        Vector2::new(at.x, at.y)
    }
}
