//! What may be wrong with a shaft that a picture shows, whatever the camera.

use nalgebra::Vector2;

use super::SeenShaft;

/// By how much its ends were taken for others, and how much longer it is than was said.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Slip {
    /// On the face, mm.
    pub hole_mm: Vector2<f64>,
    /// In the picture, px.
    pub hole_px: Vector2<f64>,
    /// In the picture, px.
    pub tail_px: Vector2<f64>,
    pub length_mm: f64,
}

impl Slip {
    pub const NONE: Self = Self {
        hole_mm: Vector2::new(0.0, 0.0),
        hole_px: Vector2::new(0.0, 0.0),
        tail_px: Vector2::new(0.0, 0.0),
        length_mm: 0.0,
    };

    /// A standard deviation of each that a shaft may have.
    pub fn of(shaft: &SeenShaft) -> [Self; 7] {
        let px = shaft.read_sd_px;
        // Only the way from one end to the other counts.
        let mm = shaft.ends_sd.mm() * std::f64::consts::SQRT_2;
        let (right, other) = (Vector2::x(), Vector2::y());
        [
            Self { hole_mm: right * mm, ..Self::NONE },
            Self { hole_mm: other * mm, ..Self::NONE },
            Self { hole_px: right * px, ..Self::NONE },
            Self { hole_px: other * px, ..Self::NONE },
            Self { tail_px: right * px, ..Self::NONE },
            Self { tail_px: other * px, ..Self::NONE },
            Self { length_mm: shaft.length_sd.mm(), ..Self::NONE },
        ]
    }

    /// The same the other way.
    pub fn back(self) -> Self {
        Self {
            hole_mm: -self.hole_mm,
            hole_px: -self.hole_px,
            tail_px: -self.tail_px,
            length_mm: -self.length_mm,
        }
    }
}
