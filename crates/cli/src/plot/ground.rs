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

/// A window of the face.
#[derive(Clone, Copy, Debug)]
pub struct Ground {
    middle: Offset,
    /// How far it reaches to both sides of its middle.
    pub half_width: Millimetres,
    high_mm: f64,
    ruler: Ruler,
}

impl Ground {
    /// The width of the face without its numbers, mm.
    pub const SIDE_MM: f64 = SIDE_MM;
    /// The height of a square face with its numbers, mm.
    pub const HEIGHT_MM: f64 = SIDE_MM + FOOT_MM;

    /// A square window that reaches `half_width` from the reference.
    pub fn about_reference(half_width: Millimetres, ruler: Ruler) -> Self {
        Self { middle: Offset::ZERO, half_width, high_mm: SIDE_MM, ruler }
    }

    /// A window that reaches `half_width` to both sides of `middle`, `high_mm` high on the sheet.
    pub fn about(middle: Offset, half_width: Millimetres, high_mm: f64, ruler: Ruler) -> Self {
        Self { middle, half_width, high_mm, ruler }
    }

    /// The height of the face with its numbers, mm.
    pub fn height_mm(self) -> f64 {
        self.high_mm + FOOT_MM
    }

    /// The scale of a face drawn below and to the right of `corner`.
    pub fn scale(self, corner: PaperPoint) -> Scale {
        let centre = corner.moved(GUTTER_MM + SIDE_MM / 2.0, -self.high_mm / 2.0);
        let area = PaperBox::around(centre, SIDE_MM, self.high_mm);
        Scale::new(area, self.middle, self.half_width)
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
        let [across, up] = self.lines(scale, Millimetres::ZERO);
        let middle = |line: &Millimetres| *line == Millimetres::ZERO;
        for (class, is_middle) in [("grid", false), ("axis", true)] {
            for line in across.iter().filter(|line| middle(line) == is_middle) {
                let x_mm = scale.point(Offset::new(line.mm(), 0.0)).x_mm;
                let [from, to] =
                    [area.bottom_mm, area.top_mm].map(|y_mm| PaperPoint::new(x_mm, y_mm));
                canvas.line(class, Segment { from, to });
            }
            for line in up.iter().filter(|line| middle(line) == is_middle) {
                let y_mm = scale.point(Offset::new(0.0, line.mm())).y_mm;
                let [from, to] =
                    [area.left_mm, area.right_mm].map(|x_mm| PaperPoint::new(x_mm, y_mm));
                canvas.line(class, Segment { from, to });
            }
        }
    }

    fn numbers(self, canvas: &mut Canvas, scale: Scale) {
        let area = scale.area();
        let ticks = self.ticks(scale);
        let [across, up] = self.lines(scale, scale.face(CORNER_MM));
        let foot_mm = area.bottom_mm - FOOT_MM + 0.6;
        for line in across {
            let at = PaperPoint::new(scale.point(Offset::new(line.mm(), 0.0)).x_mm, foot_mm);
            canvas.text("quiet", at, Anchor::Middle, TICK_TEXT_MM, &ticks.name(line));
        }
        for line in up {
            let y_mm = scale.point(Offset::new(0.0, line.mm())).y_mm - MIDDLE * TICK_TEXT_MM;
            let at = PaperPoint::new(area.left_mm - 1.4, y_mm);
            canvas.text("quiet", at, Anchor::End, TICK_TEXT_MM, &ticks.name(line));
        }
        let unit = PaperPoint::new(area.left_mm - GUTTER_MM, foot_mm);
        canvas.text("quiet", unit, Anchor::Start, TICK_TEXT_MM, self.ruler.unit().symbol);
    }

    /// The lines of the grid that cross the window upright and those that cross it level, none nearer than `air` to an end.
    fn lines(self, scale: Scale, air: Millimetres) -> [Vec<Millimetres>; 2] {
        scale.ends().map(|[least, most]| {
            let reach = Millimetres::new(least.mm().abs().max(most.mm().abs())) - air;
            let inside = |line: &Millimetres| least + air <= *line && *line <= most - air;
            self.ticks(scale).within(reach).filter(inside).collect()
        })
    }
}
