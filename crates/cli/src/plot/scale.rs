//! From the face to the sheet.

use quarterturn_geometry::{Ellipse, Millimetres, Offset};

use super::paper_box::PaperBox;
use super::paper_ellipse::PaperEllipse;
use super::paper_point::PaperPoint;

/// How a square window of the face lies on the sheet: the same scale both ways, right is right and up is up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    area: PaperBox,
    half_width: Millimetres,
}

impl Scale {
    /// The window from `-half_width` to `half_width` about the middle, drawn in the width of the square `area`.
    pub fn new(area: PaperBox, half_width: Millimetres) -> Self {
        Self { area, half_width }
    }

    /// Where the window lies on the sheet.
    pub fn area(self) -> PaperBox {
        self.area
    }

    /// How far the window reaches from its middle.
    pub fn half_width(self) -> Millimetres {
        self.half_width
    }

    /// Where a displacement from the middle is drawn.
    pub fn point(self, at: Offset) -> PaperPoint {
        let per_mm = self.paper_per_face();
        self.area.centre().moved(at.x_mm * per_mm, at.y_mm * per_mm)
    }

    /// How long a length on the face is drawn, mm of paper.
    pub fn length_mm(self, length: Millimetres) -> f64 {
        length.mm() * self.paper_per_face()
    }

    /// How long on the face `paper_mm` on the sheet is.
    pub fn face(self, paper_mm: f64) -> Millimetres {
        Millimetres::new(paper_mm / self.paper_per_face())
    }

    /// Whether the window shows `at`.
    pub fn shows(self, at: Offset) -> bool {
        at.x_mm.abs().max(at.y_mm.abs()) <= self.half_width.mm()
    }

    /// An ellipse of the face on the sheet.
    pub fn ellipse(self, ellipse: Ellipse) -> PaperEllipse {
        PaperEllipse {
            centre: self.point(ellipse.centre().from_spot()),
            semi_major_mm: self.length_mm(ellipse.semi_major()),
            semi_minor_mm: self.length_mm(ellipse.semi_minor()),
            orientation: ellipse.orientation(),
        }
    }

    fn paper_per_face(self) -> f64 {
        (self.area.right_mm - self.area.left_mm) / (2.0 * self.half_width.mm())
    }
}
