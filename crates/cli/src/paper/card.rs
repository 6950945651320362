//! The card of the next end: what is shot in which order, and boxes for what is seen.

use quarterturn_tuning::{PlannedShot, Purpose};

use super::cells::cells;
use super::dial::{self, Dial};
use super::page::Page;
use super::sheet::Sheet;
use crate::plot::{Anchor, Canvas, PaperBox, PaperPoint, Segment, shortened, wrapped};
use crate::wording::{self, FLEX_AND_LOOK};

/// A row is at least so high, and no higher than is of use.
const ROW_MM: [f64; 2] = [26.0, 46.0];
const HEAD_MM: f64 = 24.0;
const FOOT_MM: f64 = 22.0;
const TEXT_MM: f64 = 3.2;
/// Where the columns begin, from the left, as shares of the width.
const COLUMNS: [f64; 6] = [0.0, 0.06, 0.20, 0.48, 0.70, 0.86];
const HEADS: [&str; 6] = ["shot", "shaft, spot", "mark at", "hit", "tail", "call, flags"];

/// What stands on the card.
pub struct Card<'a> {
    /// Whose journal it is of.
    pub journal: &'a str,
    /// How far it is shot.
    pub distance: &'a str,
    /// The shots in their order.
    pub shots: &'a [PlannedShot],
    /// What the end should settle.
    pub settles: &'a str,
}

/// The card, on as many sheets as it takes.
pub fn card(page: Page, card: &Card<'_>) -> Vec<Sheet> {
    let free = page.free();
    let room_mm = free.top_mm - free.bottom_mm - HEAD_MM - FOOT_MM;
    let [_, rows] = cells(PaperBox { top_mm: free.bottom_mm + room_mm, ..free }, [1.0, ROW_MM[0]]);
    let row_mm = (room_mm / card.shots.len() as f64).clamp(ROW_MM[0], ROW_MM[1]);
    let numbered: Vec<_> = (1..).zip(card.shots).collect();
    let purpose = "The next end: the order, where each mark goes, and boxes for hits and tails.";
    let sheet = |shots: &[(usize, &PlannedShot)]| {
        page.sheet("Card of the next end", purpose, |canvas, free| {
            head(canvas, free, card);
            let mut top_mm = free.top_mm - HEAD_MM;
            for &(number, shot) in shots {
                row(canvas, PaperBox { top_mm, bottom_mm: top_mm - row_mm, ..free }, number, shot);
                top_mm -= row_mm;
            }
            foot(canvas, PaperBox { top_mm, ..free }, card.settles);
        })
    };
    numbered.chunks(rows).map(sheet).collect()
}

fn head(canvas: &mut Canvas, free: PaperBox, card: &Card<'_>) {
    let corner = PaperPoint::new(free.left_mm, free.top_mm - 5.0);
    canvas.text("text", corner, Anchor::Start, 5.2, "Card of the next end");
    let name = shortened(card.journal, TEXT_MM, 70.0);
    let told = format!("{name}, {}", card.distance);
    canvas.text("text", corner.moved(0.0, -6.0), Anchor::Start, TEXT_MM, &told);
    let blanks = "date ______________   evening ______________   wind ______________";
    let right = PaperPoint::new(free.right_mm, corner.y_mm - 6.0);
    canvas.text("text", right, Anchor::End, TEXT_MM, blanks);
    for (at, name) in COLUMNS.into_iter().zip(HEADS) {
        let x_mm = free.left_mm + at * (free.right_mm - free.left_mm) + 1.0;
        let at = PaperPoint::new(x_mm, free.top_mm - HEAD_MM + 1.6);
        canvas.text("quiet", at, Anchor::Start, TEXT_MM, name);
    }
}

fn row(canvas: &mut Canvas, area: PaperBox, number: usize, shot: &PlannedShot) {
    canvas.rectangle("line", area);
    let width_mm = area.right_mm - area.left_mm;
    let column = |at: usize| area.left_mm + COLUMNS[at] * width_mm;
    for at in 1..COLUMNS.len() {
        let (from, to) =
            (PaperPoint::new(column(at), area.top_mm), PaperPoint::new(column(at), area.bottom_mm));
        canvas.line("thin", Segment { from, to });
    }
    let middle_mm = area.centre().y_mm;
    let cell = |at: usize| PaperPoint::new(column(at) + 1.5, middle_mm);
    canvas.text("text", cell(0).moved(0.0, -2.0), Anchor::Start, 5.5, &number.to_string());
    let name = shortened(shot.shaft.as_str(), 6.0, column(2) - column(1) - 3.0);
    canvas.text("text", cell(1).moved(0.0, 0.0), Anchor::Start, 6.0, &name);
    let spot = format!("spot {number}");
    canvas.text("quiet", cell(1).moved(0.0, -6.0), Anchor::Start, TEXT_MM, &spot);
    mark(canvas, cell(2), column(3) - column(2) - 22.0, shot);
    hit_box(canvas, PaperBox { left_mm: column(3), right_mm: column(4), ..area });
    tail_box(canvas, PaperPoint::new(column(4) + (column(5) - column(4)) / 2.0, middle_mm));
    for (line, flag) in ["good", "poor", "wind, contact"].into_iter().enumerate() {
        let at = cell(5).moved(0.0, 6.0 - 6.5 * line as f64);
        canvas.rectangle("line", PaperBox::around(at.moved(1.5, 1.0), 3.0, 3.0));
        canvas.text("text", at.moved(4.2, 0.0), Anchor::Start, 2.8, flag);
    }
}

/// The dial to copy and what it says in words; a reference stays as it is.
fn mark(canvas: &mut Canvas, at: PaperPoint, room_mm: f64, shot: &PlannedShot) {
    let Purpose::Bare { index, from, .. } = shot.purpose else {
        canvas.text("text", at.moved(0.0, -1.0), Anchor::Start, TEXT_MM, "fletched reference");
        return;
    };
    dial::dial(canvas, Dial { now: from, next: index }, at.moved(9.0, 0.0), 8.5);
    let said = wording::instruction(from, index);
    for (line, text) in wrapped(&said, 2.9, room_mm).iter().enumerate() {
        let below = at.moved(19.5, 6.5 - 3.8 * line as f64);
        canvas.text("text", below, Anchor::Start, 2.9, text);
    }
}

/// A box with the spot in its middle, to put a dot where the hit was.
fn hit_box(canvas: &mut Canvas, cell: PaperBox) {
    let side_mm = (cell.top_mm - cell.bottom_mm).min(cell.right_mm - cell.left_mm) - 4.0;
    let area = PaperBox::around(cell.centre(), side_mm, side_mm);
    canvas.rectangle("thin", area);
    let middle = area.centre();
    let axes = [
        [PaperPoint::new(area.left_mm, middle.y_mm), PaperPoint::new(area.right_mm, middle.y_mm)],
        [PaperPoint::new(middle.x_mm, area.bottom_mm), PaperPoint::new(middle.x_mm, area.top_mm)],
    ];
    for [from, to] in axes {
        canvas.line("faint", Segment { from, to });
    }
    canvas.circle("thin", middle, 1.2);
}

/// A ring to draw the tail in, from the middle outward.
fn tail_box(canvas: &mut Canvas, middle: PaperPoint) {
    canvas.circle("thin", middle, 10.0);
    canvas.circle("faint", middle, 5.0);
    canvas.circle("solid", middle, 0.5);
}

fn foot(canvas: &mut Canvas, area: PaperBox, settles: &str) {
    let told = format!("{settles} One arrow to a spot. {FLEX_AND_LOOK}");
    for (line, text) in wrapped(&told, 2.9, area.right_mm - area.left_mm).iter().enumerate() {
        let at = PaperPoint::new(area.left_mm, area.top_mm - 5.0 - 3.8 * line as f64);
        canvas.text("text", at, Anchor::Start, 2.9, text);
    }
}
