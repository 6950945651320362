//! The ground of a picture of the face: a grid with numbers in the reader's unit, cut off at its edges.

use quarterturn_geometry::{Millimetres, Offset};

use super::block::INNER_MM;
use super::canvas::Canvas;
use super::paper_box::PaperBox;
use super::paper_point::PaperPoint;
use super::scale::Scale;
use super::segment::Segment;
use super::shape::Anchor;
use super::text_width::MIDDLE;
use super::ticks::Ticks;
use crate::wording::Ruler;

/// Room for the numbers to the left of the face, mm.
const GUTTER_MM: f64 = 13.5;
/// The width and the height of the face, mm.
const SIDE_MM: f64 = INNER_MM - GUTTER_MM;
/// Numbers on an axis are at least so far apart, mm.
const TICK_MM: f64 = 12.0;
/// No number is written so near to a corner, where it would run into the other axis, mm.
const CORNER_MM: f64 = 2.5;
const TICK_TEXT_MM: f64 = 3.0;
/// Room for the numbers below the face, mm.
const FOOT_MM: f64 = 4.3;

/// A square window of the face about the reference.
#[derive(Clone, Copy, Debug)]
pub struct Ground {
    /// How far it reaches from its middle.
    pub half_width: Millimetres,
    /// The reader's unit.
    pub ruler: Ruler,
}

impl Ground {
    /// The height of the face with its numbers, mm.
    pub const HEIGHT_MM: f64 = SIDE_MM + FOOT_MM;

    /// The scale of a face drawn below and to the right of `corner`.
    pub fn scale(self, corner: PaperPoint) -> Scale {
        let middle = corner.moved(GUTTER_MM + SIDE_MM / 2.0, -SIDE_MM / 2.0);
        Scale::new(PaperBox::around(middle, SIDE_MM, SIDE_MM), self.half_width)
    }

    /// The lines of its grid.
    pub fn ticks(self, scale: Scale) -> Ticks {
        Ticks::new(self.ruler.unit(), scale.face(TICK_MM))
    }

    /// Draws it with what `inner` draws on it; `id` must be the only one on the page.
    pub fn draw(
        self,
        canvas: &mut Canvas,
        corner: PaperPoint,
        id: &str,
        inner: impl FnOnce(&mut Canvas, Scale),
    ) {
        let scale = self.scale(corner);
        canvas.rectangle("face", scale.area());
        canvas.clipped(id, scale.area(), |canvas| {
            self.grid(canvas, scale);
            inner(canvas, scale);
        });
        self.numbers(canvas, scale);
    }

    fn grid(self, canvas: &mut Canvas, scale: Scale) {
        let area = scale.area();
        for line in self.ticks(scale).within(scale.half_width()) {
            let class = if line == Millimetres::ZERO { "axis" } else { "grid" };
            let at = scale.point(Offset::new(line.mm(), line.mm()));
            let upright = [area.bottom_mm, area.top_mm].map(|y_mm| PaperPoint::new(at.x_mm, y_mm));
            let level = [area.left_mm, area.right_mm].map(|x_mm| PaperPoint::new(x_mm, at.y_mm));
            for [from, to] in [upright, level] {
                canvas.line(class, Segment { from, to });
            }
        }
    }

    fn numbers(self, canvas: &mut Canvas, scale: Scale) {
        let area = scale.area();
        let ticks = self.ticks(scale);
        for line in ticks.within(scale.half_width() - scale.face(CORNER_MM)) {
            let at = scale.point(Offset::new(line.mm(), line.mm()));
            let below = PaperPoint::new(at.x_mm, area.bottom_mm - FOOT_MM + 0.6);
            let beside = PaperPoint::new(area.left_mm - 1.4, at.y_mm - MIDDLE * TICK_TEXT_MM);
            canvas.text("quiet", below, Anchor::Middle, TICK_TEXT_MM, &ticks.name(line));
            canvas.text("quiet", beside, Anchor::End, TICK_TEXT_MM, &ticks.name(line));
        }
        let unit = PaperPoint::new(area.left_mm - GUTTER_MM, area.bottom_mm - FOOT_MM + 0.6);
        canvas.text("quiet", unit, Anchor::Start, TICK_TEXT_MM, self.ruler.unit().symbol);
    }
}
