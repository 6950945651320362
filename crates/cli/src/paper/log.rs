//! The range log: a blank form for an evening without the program.

use super::cells::cells;
use super::page::Page;
use super::sheet::Sheet;
use crate::plot::{Anchor, Canvas, PaperBox, PaperPoint, Segment};

const ROW_MM: f64 = 8.0;
const HEAD_MM: f64 = 22.0;
const TEXT_MM: f64 = 3.0;
/// The columns and where they begin, from the left, as shares of the width.
const COLUMNS: [(&str, f64); 8] = [
    ("end", 0.0),
    ("shaft", 0.07),
    ("mark", 0.18),
    ("right or left", 0.28),
    ("up or down", 0.44),
    ("tail", 0.60),
    ("call", 0.74),
    ("wind, contact, nock", 0.82),
];

/// A blank log.
pub fn log(page: Page) -> Sheet {
    let purpose = "A form for an evening: one line for each shot, typed in at home.";
    page.sheet("Range log", purpose, |canvas, free| {
        let corner = PaperPoint::new(free.left_mm, free.top_mm - 5.0);
        canvas.text("text", corner, Anchor::Start, 5.2, "Range log");
        let blanks = "date ____________   evening ____________   distance ____________   unit ______   wind ____________";
        canvas.text("text", corner.moved(0.0, -7.5), Anchor::Start, TEXT_MM, blanks);
        rows(canvas, PaperBox { top_mm: free.top_mm - HEAD_MM, ..free });
    })
}

fn rows(canvas: &mut Canvas, area: PaperBox) {
    let [_, rows] = cells(area, [1.0, ROW_MM]);
    let area = PaperBox { bottom_mm: area.top_mm - rows as f64 * ROW_MM, ..area };
    for row in 0..=rows {
        let y_mm = area.top_mm - row as f64 * ROW_MM;
        let (from, to) =
            (PaperPoint::new(area.left_mm, y_mm), PaperPoint::new(area.right_mm, y_mm));
        canvas.line("thin", Segment { from, to });
    }
    let at = |share: f64| area.left_mm + share * (area.right_mm - area.left_mm);
    for (name, share) in COLUMNS {
        let (from, to) =
            (PaperPoint::new(at(share), area.top_mm), PaperPoint::new(at(share), area.bottom_mm));
        canvas.line("thin", Segment { from, to });
        canvas.text("quiet", from.moved(1.0, 1.6), Anchor::Start, TEXT_MM, name);
    }
    let right = Segment {
        from: PaperPoint::new(area.right_mm, area.top_mm),
        to: PaperPoint::new(area.right_mm, area.bottom_mm),
    };
    canvas.line("thin", right);
}
