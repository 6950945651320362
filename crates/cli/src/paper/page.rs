//! An empty page with the bars by which a print is checked.

use quarterturn_geometry::Millimetres;

use super::correction::{BAR_MM, Correction};
use super::paper_size::PaperSize;
use super::sheet::Sheet;
use crate::plot::{Anchor, Canvas, PaperBox, PaperPoint, Segment};

/// Printers leave so much of the paper blank on each side, mm.
const MARGIN_MM: f64 = 10.0;
/// Room for the bars along the lower edge, mm.
const FOOT_MM: f64 = 13.0;
/// Room for the bars along the right edge, mm.
const SIDE_MM: f64 = 7.0;
/// Two inches, for who has no other rule.
const TWO_INCHES_MM: f64 = 50.8;
/// Half the width of a line: a bar is measured from outer edge to outer edge, mm.
const HALF_LINE_MM: f64 = 0.15;
const TEXT_MM: f64 = 2.6;

/// What every page of a sheet has.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Page {
    /// The paper.
    pub size: PaperSize,
    /// What makes up for the printer.
    pub correction: Correction,
}

impl Page {
    /// The width and the height of the drawing, true mm.
    fn width_and_height_mm(self) -> [f64; 2] {
        let [width_mm, height_mm] = self.size.width_and_height_mm();
        let stretch = self.correction.stretch();
        [width_mm / stretch.x, height_mm / stretch.y]
    }

    /// What the bars and the margins leave free, true mm.
    pub fn free(self) -> PaperBox {
        let inside = self.inside();
        PaperBox {
            bottom_mm: inside.bottom_mm + FOOT_MM,
            right_mm: inside.right_mm - SIDE_MM,
            ..inside
        }
    }

    /// The largest face that fits on one sheet, whole centimetres.
    pub fn widest_square(self) -> Millimetres {
        let free = self.free();
        let side_mm = (free.right_mm - free.left_mm).min(free.top_mm - free.bottom_mm);
        Millimetres::from_cm((side_mm / 10.0).floor())
    }

    fn inside(self) -> PaperBox {
        let ([width_mm, height_mm], stretch) =
            (self.width_and_height_mm(), self.correction.stretch());
        let (x_mm, y_mm) = (MARGIN_MM / stretch.x, MARGIN_MM / stretch.y);
        PaperBox {
            left_mm: x_mm,
            bottom_mm: y_mm,
            right_mm: width_mm - x_mm,
            top_mm: height_mm - y_mm,
        }
    }

    /// A sheet with the bars and with what `draw` draws in the free part.
    pub fn sheet(
        self,
        title: &str,
        purpose: &str,
        draw: impl FnOnce(&mut Canvas, PaperBox),
    ) -> Sheet {
        let [width_mm, height_mm] = self.width_and_height_mm();
        let mut canvas = Canvas::new(width_mm, height_mm);
        draw(&mut canvas, self.free());
        self.bars(&mut canvas);
        Sheet {
            canvas,
            correction: self.correction,
            title: title.to_owned(),
            purpose: purpose.to_owned(),
        }
    }

    fn bars(self, canvas: &mut Canvas) {
        let inside = self.inside();
        let corner = PaperPoint::new(inside.left_mm, inside.bottom_mm + 2.0);
        across(canvas, corner, BAR_MM, "100 mm");
        across(canvas, corner.moved(BAR_MM + 12.0, 0.0), TWO_INCHES_MM, "2 in");
        let foot = PaperPoint::new(inside.right_mm - 2.0, inside.bottom_mm + FOOT_MM);
        up(canvas, foot, BAR_MM, &["100", "mm"]);
        up(canvas, foot.moved(0.0, BAR_MM + 12.0), TWO_INCHES_MM, &["2 in"]);
        let told = "Print at actual size (100 %), then lay a rule on the bars: each must be what it says, across and up. \
            Else: --measured ACROSS,UP";
        canvas.text("quiet", corner.moved(0.0, 6.4), Anchor::Start, TEXT_MM, told);
    }
}

/// A bar from `from` to the right, with its length below it.
fn across(canvas: &mut Canvas, from: PaperPoint, length_mm: f64, name: &str) {
    let to = from.moved(length_mm, 0.0);
    canvas.line("bold", Segment { from, to });
    for end in [from.moved(HALF_LINE_MM, 0.0), to.moved(-HALF_LINE_MM, 0.0)] {
        canvas.line("line", Segment { from: end.moved(0.0, -1.5), to: end.moved(0.0, 1.5) });
    }
    canvas.text("text", from.moved(length_mm / 2.0, 1.0), Anchor::Middle, TEXT_MM, name);
}

/// A bar from `from` upward, with its length above it.
fn up(canvas: &mut Canvas, from: PaperPoint, length_mm: f64, name: &[&str]) {
    let to = from.moved(0.0, length_mm);
    canvas.line("bold", Segment { from, to });
    for end in [from.moved(0.0, HALF_LINE_MM), to.moved(0.0, -HALF_LINE_MM)] {
        canvas.line("line", Segment { from: end.moved(-1.5, 0.0), to: end.moved(1.5, 0.0) });
    }
    for (line, name) in name.iter().rev().enumerate() {
        let above = to.moved(0.0, 2.2 + 3.0 * line as f64);
        canvas.text("text", above, Anchor::Middle, TEXT_MM, name);
    }
}
