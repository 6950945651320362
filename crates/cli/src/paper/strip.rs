//! A strip in true size that is wrapped once round a shaft and glued on itself, its lower edge toward the nock.

use std::f64::consts::PI;

use quarterturn_geometry::Millimetres;

use crate::plot::{Canvas, PaperBox, PaperPoint, Segment};

/// Where the strip is glued on itself, mm.
const TAB_MM: f64 = 8.0;

/// Where a strip lies and how large it is.
#[derive(Clone, Copy)]
pub struct Strip {
    /// Its lower left corner.
    pub corner: PaperPoint,
    /// Once round the shaft.
    pub round_mm: f64,
    /// From its lower edge to its upper one.
    pub high_mm: f64,
}

impl Strip {
    /// The strip for shafts of this diameter.
    pub fn new(corner: PaperPoint, diameter: Millimetres, high_mm: f64) -> Self {
        Self { corner, round_mm: PI * diameter.mm(), high_mm }
    }

    /// The place on its lower edge that is `degrees` to the right of its left end.
    pub fn at(self, degrees: f64) -> PaperPoint {
        self.corner.moved(degrees / 360.0 * self.round_mm, 0.0)
    }

    /// The line along which it is cut out.
    pub fn outline(self, canvas: &mut Canvas) {
        canvas.rectangle(
            "cut",
            PaperBox {
                left_mm: self.corner.x_mm,
                bottom_mm: self.corner.y_mm,
                right_mm: self.corner.x_mm + self.round_mm + TAB_MM,
                top_mm: self.corner.y_mm + self.high_mm,
            },
        );
    }

    /// The two lines that come to lie on each other.
    pub fn ends(self, canvas: &mut Canvas, class: &str) {
        for end_mm in [0.0, self.round_mm] {
            let from = self.corner.moved(end_mm, 0.0);
            canvas.line(class, Segment { from, to: from.moved(0.0, self.high_mm) });
        }
    }

    /// The arrow on the part that is glued: toward the point.
    pub fn toward_the_point(self, canvas: &mut Canvas) {
        let tail = self.corner.moved(self.round_mm + TAB_MM / 2.0, 3.0);
        let head = tail.moved(0.0, 8.0);
        canvas.line("line", Segment { from: tail, to: head.moved(0.0, -2.0) });
        canvas.polygon("solid", &[head, head.moved(-1.0, -2.4), head.moved(1.0, -2.4)]);
    }
}
