//! The card of the quiver: which arrow is shot first, what it carries, and boxes for the season.

use super::cells::cells;
use super::page::Page;
use super::sheet::Sheet;
use crate::plot::{Anchor, Canvas, PaperBox, PaperPoint, Segment, shortened, wrapped};

const ROW_MM: f64 = 15.0;
const HEAD_MM: f64 = 24.0;
/// Room for a line of text below the rows.
const LINE_MM: f64 = 4.0;
const TEXT_MM: f64 = 3.2;
/// Where the columns begin, from the left, as shares of the width.
const COLUMNS: [f64; 8] = [0.0, 0.07, 0.16, 0.29, 0.50, 0.62, 0.70, 0.80];
const HEADS: [&str; 8] =
    ["shot", "arrow", "mark at", "carries", "checked", "shots", "turns", "checks, hits, nock"];

/// What stands on the card.
pub struct QuiverCard<'a> {
    /// Whose journal it is of.
    pub journal: &'a str,
    /// The arrows in their order.
    pub arrows: &'a [CardArrow],
    /// Limits, what to look at again and cautions, a paragraph each.
    pub below: &'a [String],
}

/// An arrow on the card.
pub struct CardArrow {
    /// When it is shot; "-" where it has no place.
    pub place: String,
    /// Its name.
    pub name: String,
    /// Where its mark stands.
    pub mark: String,
    /// Its head.
    pub carries: String,
    /// When it was last checked.
    pub checked: String,
    /// How often it was shot.
    pub shots: String,
    /// How often its nock was turned.
    pub turns: String,
}

/// The card, on as many sheets as it takes.
pub fn quiver(page: Page, card: &QuiverCard<'_>) -> Vec<Sheet> {
    let free = page.free();
    let lines = lines(card, free.right_mm - free.left_mm);
    let foot_mm = LINE_MM * (lines.len() + 1) as f64;
    let room = PaperBox { top_mm: free.top_mm - HEAD_MM - foot_mm, ..free };
    let [_, rows] = cells(room, [1.0, ROW_MM]);
    let purpose =
        "The quiver: the order, the heads, when each arrow was checked, and boxes for the season.";
    let sheet = |arrows: &[CardArrow]| {
        page.sheet("The quiver", purpose, |canvas, free| {
            head(canvas, free, card.journal);
            let mut top_mm = free.top_mm - HEAD_MM;
            for arrow in arrows {
                row(canvas, PaperBox { top_mm, bottom_mm: top_mm - ROW_MM, ..free }, arrow);
                top_mm -= ROW_MM;
            }
            for (line, text) in lines.iter().enumerate() {
                let y_mm = top_mm - LINE_MM * (line + 1) as f64 - 1.0;
                canvas.text("text", PaperPoint::new(free.left_mm, y_mm), Anchor::Start, 2.9, text);
            }
        })
    };
    card.arrows.chunks(rows).map(sheet).collect()
}

fn lines(card: &QuiverCard<'_>, width_mm: f64) -> Vec<String> {
    card.below.iter().flat_map(|text| wrapped(text, 2.9, width_mm)).collect()
}

fn head(canvas: &mut Canvas, free: PaperBox, journal: &str) {
    let corner = PaperPoint::new(free.left_mm, free.top_mm - 5.0);
    canvas.text("text", corner, Anchor::Start, 5.2, "The quiver");
    let name = shortened(journal, TEXT_MM, 80.0);
    canvas.text("text", corner.moved(0.0, -6.0), Anchor::Start, TEXT_MM, &name);
    let blanks = "season ______________   my farthest ______________";
    let right = PaperPoint::new(free.right_mm, corner.y_mm - 6.0);
    canvas.text("text", right, Anchor::End, TEXT_MM, blanks);
    for (at, name) in COLUMNS.into_iter().zip(HEADS) {
        let at = PaperPoint::new(column(free, at) + 1.0, free.top_mm - HEAD_MM + 1.6);
        canvas.text("quiet", at, Anchor::Start, TEXT_MM, name);
    }
}

fn column(area: PaperBox, share: f64) -> f64 {
    area.left_mm + share * (area.right_mm - area.left_mm)
}

fn row(canvas: &mut Canvas, area: PaperBox, arrow: &CardArrow) {
    canvas.rectangle("line", area);
    for share in COLUMNS.into_iter().skip(1) {
        let x_mm = column(area, share);
        let (from, to) =
            (PaperPoint::new(x_mm, area.top_mm), PaperPoint::new(x_mm, area.bottom_mm));
        canvas.line("thin", Segment { from, to });
    }
    let texts = [
        (&arrow.place, 5.0),
        (&arrow.name, 6.0),
        (&arrow.mark, TEXT_MM),
        (&arrow.carries, TEXT_MM),
        (&arrow.checked, TEXT_MM),
        (&arrow.shots, TEXT_MM),
        (&arrow.turns, TEXT_MM),
    ];
    let ends = COLUMNS.into_iter().skip(1);
    for ((share, end), (text, size_mm)) in COLUMNS.into_iter().zip(ends).zip(texts) {
        let (left_mm, right_mm) = (column(area, share) + 1.5, column(area, end));
        let at = PaperPoint::new(left_mm, area.centre().y_mm - 0.35 * size_mm);
        let text = shortened(text, size_mm, right_mm - left_mm - 1.0);
        canvas.text("text", at, Anchor::Start, size_mm, &text);
    }
}
