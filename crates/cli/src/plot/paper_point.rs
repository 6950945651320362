//! A place on the sheet of paper.

use quarterturn_geometry::{Angle, Millimetres, Offset};

/// A place on the sheet, in millimetres of paper from its lower left corner, x to the right and y **up**.
///
/// The face is seen with y up, so the sheet is too; only the [`Canvas`](super::canvas::Canvas) turns it over.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PaperPoint {
    /// From the left edge, mm.
    pub x_mm: f64,
    /// From the lower edge, mm.
    pub y_mm: f64,
}

impl PaperPoint {
    /// The place `x_mm` from the left edge and `y_mm` from the lower edge.
    pub const fn new(x_mm: f64, y_mm: f64) -> Self {
        Self { x_mm, y_mm }
    }

    /// The place so far to the right and up from here.
    pub fn moved(self, right_mm: f64, up_mm: f64) -> Self {
        Self::new(self.x_mm + right_mm, self.y_mm + up_mm)
    }

    /// The place so far from here toward a clock angle.
    pub fn toward(self, direction: Angle, out_mm: f64) -> Self {
        let offset = Offset::toward(direction, Millimetres::new(out_mm));
        self.moved(offset.x_mm, offset.y_mm)
    }

    /// How far it is to `other`, mm.
    pub fn distance_mm(self, other: Self) -> f64 {
        (other.x_mm - self.x_mm).hypot(other.y_mm - self.y_mm)
    }
}
