//! The shots of an end in rows.

use quarterturn_geometry::Offset;
use quarterturn_tuning::{End, Setup, Shot};

use crate::plot::block::{Block, INNER_MM};
use crate::plot::canvas::Canvas;
use crate::plot::paper_point::PaperPoint;
use crate::plot::segment::Segment;
use crate::plot::shape::{Anchor, PLAIN};
use crate::plot::target_plot::middle::Middle;
use crate::plot::text_width::{BOLD, shortened};
use crate::wording::{Ruler, mark, tail};

const TEXT_MM: f64 = 3.0;
const QUIET_MM: f64 = 3.0;
const ROW_MM: f64 = 4.6;
/// Air between two columns, mm.
const AIR_MM: f64 = 1.5;
/// Where each column begins, and where the last one ends, mm.
const COLUMNS_MM: [f64; 6] = [0.0, 13.0, 35.0, 67.0, 99.0, INNER_MM];

/// The shots in the order they were entered.
pub struct Rows<'a> {
    /// How the journal was begun.
    pub setup: &'a Setup,
    /// The end.
    pub end: &'a End,
    /// Where its references landed.
    pub middle: Option<Middle>,
    /// The reader's unit.
    pub ruler: Ruler,
}

impl Rows<'_> {
    fn heading(&self) -> [String; 5] {
        let symbol = self.ruler.unit().symbol;
        [
            "shaft".to_owned(),
            "mark at".to_owned(),
            format!("hit, {symbol}"),
            "from reference".to_owned(),
            "tail, deg".to_owned(),
        ]
    }

    fn cells(&self, shot: &Shot) -> [String; 5] {
        let is_reference = self.setup.references.contains(&shot.shaft);
        let hit = shot.hit.map(|hit| hit.at.from_spot());
        let said = |at: Option<Offset>| at.map_or(String::new(), |at| self.ruler.miss_bare(at));
        let from = hit.zip(self.middle).map(|(at, middle)| at - middle.at);
        let lean = shot.hit.map(|hit| tail(hit.lean).replace("tail ", "").replace(" deg", ""));
        [
            shot.shaft.to_string(),
            if is_reference { "reference".to_owned() } else { mark(shot.index) },
            hit.map_or("no hit".to_owned(), |at| said(Some(at))),
            said(from.filter(|_| !is_reference)),
            lean.unwrap_or_default(),
        ]
    }

    fn write(
        canvas: &mut Canvas,
        base: PaperPoint,
        size_mm: f64,
        cells: &[String; 5],
        class: &str,
    ) {
        for (at, text) in cells.iter().enumerate() {
            let class = if at == 0 && class == PLAIN { "strong" } else { class };
            let bold = if class == "strong" { BOLD } else { 1.0 };
            let room_mm = (COLUMNS_MM[at + 1] - COLUMNS_MM[at] - AIR_MM) / bold;
            let text = shortened(text, size_mm, room_mm);
            canvas.text(class, base.moved(COLUMNS_MM[at], 0.0), Anchor::Start, size_mm, &text);
        }
    }
}

impl Block for Rows<'_> {
    fn height_mm(&self) -> f64 {
        ROW_MM * (self.end.shots.len() as f64 + 1.0)
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let mut base = corner.moved(0.0, -QUIET_MM);
        Self::write(canvas, base, QUIET_MM, &self.heading(), "quiet");
        for shot in &self.end.shots {
            let line = base.moved(0.0, -0.3 * ROW_MM);
            canvas.line("grid", Segment { from: line, to: line.moved(INNER_MM, 0.0) });
            base = base.moved(0.0, -ROW_MM);
            Self::write(canvas, base, TEXT_MM, &self.cells(shot), PLAIN);
        }
    }
}
