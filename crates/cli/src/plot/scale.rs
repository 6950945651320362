//! From the face to the sheet.

use quarterturn_geometry::{Ellipse, Millimetres, Offset};

use super::paper_box::PaperBox;
use super::paper_ellipse::PaperEllipse;
use super::paper_point::PaperPoint;

/// How a window of the face lies on the sheet: the same scale both ways, right is right and up is up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    area: PaperBox,
    middle: Offset,
    half_width: Millimetres,
}

impl Scale {
    /// The window that reaches `half_width` to both sides of `middle`, drawn in the width of `area`.
    pub fn new(area: PaperBox, middle: Offset, half_width: Millimetres) -> Self {
        Self { area, middle, half_width }
    }

    /// Where the window lies on the sheet.
    pub fn area(self) -> PaperBox {
        self.area
    }

    /// How far the window reaches to both sides of its middle.
    pub fn half_width(self) -> Millimetres {
        self.half_width
    }

    /// The left end and the right end of the window, then its lower and its upper one.
    pub fn ends(self) -> [[Millimetres; 2]; 2] {
        let area = self.area;
        let half_height = self.face((area.top_mm - area.bottom_mm) / 2.0);
        let about = |middle_mm: f64, half: Millimetres| {
            [Millimetres::new(middle_mm) - half, Millimetres::new(middle_mm) + half]
        };
        [about(self.middle.x_mm, self.half_width), about(self.middle.y_mm, half_height)]
    }

    /// Where a displacement from the reference is drawn.
    pub fn point(self, at: Offset) -> PaperPoint {
        let per_mm = self.paper_per_face();
        let from_middle = at - self.middle;
        self.area.centre().moved(from_middle.x_mm * per_mm, from_middle.y_mm * per_mm)
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
        let within = |mm: f64, [least, most]: [Millimetres; 2]| least.mm() <= mm && mm <= most.mm();
        let [across, up] = self.ends();
        within(at.x_mm, across) && within(at.y_mm, up)
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
