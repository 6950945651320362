//! The face with a grid: hits are read off it, or from a photo of it.

use quarterturn_geometry::{Angle, Millimetres, Offset};
use quarterturn_photo::{Corner, Dot};

use super::grid::Grid;
use super::page::Page;
use super::photo_mark::photo_mark;
use super::sheet::Sheet;
use super::tiles::{self, Tile, tiles};
use crate::plot::{Anchor, Canvas, PaperBox, PaperPoint, Segment};

/// How far out the hours stand, as a share of the half face.
const HOURS_AT: f64 = 0.62;
const HOUR_TICK_MM: f64 = 4.0;
const TEXT_MM: f64 = 3.0;
const CROSS_MM: f64 = 3.0;

/// A square face with its spot in the middle, on as many sheets as it takes.
pub fn face(page: Page, across: Millimetres, grid: Grid) -> Vec<Sheet> {
    let tiled = tiles(page.free(), across);
    let face = Face { half_mm: across.mm() / 2.0, grid };
    let alone = tiled.len() == 1;
    let sheet = |tile: Tile| {
        let title = if alone { "Face".to_owned() } else { format!("Face, part {}", tile.name()) };
        page.sheet(&title, &face.purpose(), |canvas, free| {
            let spot = free.centre().moved(-tile.middle.x_mm, -tile.middle.y_mm);
            canvas.clipped("face", free, |canvas| face.draw(canvas, spot));
            if !alone {
                crosses(canvas, free);
                let corner = PaperPoint::new(free.left_mm + 8.0, free.top_mm - 4.0);
                canvas.text("quiet", corner, Anchor::Start, TEXT_MM, &title);
            }
        })
    };
    tiled.into_iter().map(sheet).collect()
}

struct Face {
    half_mm: f64,
    grid: Grid,
}

impl Face {
    fn purpose(&self) -> String {
        format!(
            "A face with a grid of {} and four marks for a photo, {:.1} mm apart along each edge.",
            self.grid.step(),
            2.0 * self.marks_out_mm()
        )
    }

    /// How far the photo marks stand from the spot, to the side and up.
    fn marks_out_mm(&self) -> f64 {
        self.half_mm - Dot::MARK.mm() - 1.0
    }

    fn draw(&self, canvas: &mut Canvas, spot: PaperPoint) {
        self.lines(canvas, spot);
        self.hours(canvas, spot);
        canvas.circle("blank", spot, 3.0);
        canvas.circle("solid", spot, 0.8);
        let out_mm = self.marks_out_mm();
        for corner in Corner::ALL {
            let at = corner.point(Millimetres::new(2.0 * out_mm));
            photo_mark(canvas, spot.moved(at.x_mm, at.y_mm), corner);
        }
        let told = format!("photo marks {:.1} mm apart", 2.0 * out_mm);
        let below = spot.moved(0.0, -out_mm);
        canvas.rectangle("paper", PaperBox::around(below, 46.0, TEXT_MM * 1.6));
        let base = below.moved(0.0, -TEXT_MM / 3.0);
        canvas.text("quiet", base, Anchor::Middle, TEXT_MM, &told);
    }

    fn lines(&self, canvas: &mut Canvas, spot: PaperPoint) {
        let half_mm = self.half_mm;
        for (out, number) in self.grid.lines(Millimetres::new(half_mm)) {
            let class = if number.is_some() { "line" } else { "faint" };
            let sides: &[f64] = if out == Millimetres::ZERO { &[0.0] } else { &[-1.0, 1.0] };
            for at_mm in sides.iter().map(|side| side * out.mm()) {
                let upright = [-half_mm, half_mm].map(|y_mm| spot.moved(at_mm, y_mm));
                let level = [-half_mm, half_mm].map(|x_mm| spot.moved(x_mm, at_mm));
                for [from, to] in [upright, level] {
                    canvas.line(class, Segment { from, to });
                }
                if let Some(number) = number.as_deref().filter(|_| at_mm != 0.0) {
                    let beside = spot.moved(at_mm + 0.8, 0.8);
                    let above = spot.moved(0.8, at_mm + 0.8);
                    canvas.text("text", beside, Anchor::Start, TEXT_MM, number);
                    canvas.text("text", above, Anchor::Start, TEXT_MM, number);
                }
            }
        }
    }

    fn hours(&self, canvas: &mut Canvas, spot: PaperPoint) {
        let out_mm = self.half_mm * HOURS_AT;
        for hour in 1..=12_u32 {
            let toward =
                Offset::toward(Angle::from_degrees(f64::from(hour) * 30.0), Millimetres::new(1.0));
            let at = |mm: f64| spot.moved(toward.x_mm * mm, toward.y_mm * mm);
            let tick = Segment { from: at(out_mm), to: at(out_mm + HOUR_TICK_MM) };
            canvas.line("bold", tick);
            let name = at(out_mm + HOUR_TICK_MM + 3.0).moved(0.0, -1.2);
            canvas.circle("blank", name.moved(0.0, 1.2), 2.6);
            canvas.text("text", name, Anchor::Middle, 3.4, &hour.to_string());
        }
    }
}

/// Crosses in the middle of where the tiles overlap: laid on each other, they join the parts.
fn crosses(canvas: &mut Canvas, free: PaperBox) {
    let inside = free.grown(-tiles::OVERLAP_MM / 2.0);
    for x_mm in [inside.left_mm, inside.right_mm] {
        for y_mm in [inside.bottom_mm, inside.top_mm] {
            let at = PaperPoint::new(x_mm, y_mm);
            for (right, up) in [(CROSS_MM, 0.0), (0.0, CROSS_MM)] {
                let along = Segment { from: at.moved(-right, -up), to: at.moved(right, up) };
                canvas.line("bold", along);
            }
        }
    }
}
