//! Every shaft of the target plot in a row: its mark, its name, its verdict in words and the numbers behind it.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{ShaftReport, WideShaft};

use super::{glyphs, wording};
use crate::plot::block::{Block, INNER_MM};
use crate::plot::canvas::Canvas;
use crate::plot::paper_point::PaperPoint;
use crate::plot::segment::Segment;
use crate::plot::shape::{Anchor, PLAIN};
use crate::plot::text_width::{BOLD, MIDDLE, shortened};
use crate::wording::{Ruler, percent_short};

const TEXT_MM: f64 = 3.5;
const QUIET_MM: f64 = 3.0;
const ROW_MM: f64 = 4.6;
/// The longest name in the table, mm.
const NAME_MM: f64 = 16.0;

/// A column: from where, and which way its text runs.
struct Column {
    at_mm: f64,
    anchor: Anchor,
}

const NAME: Column = Column { at_mm: 5.5, anchor: Anchor::Start };
const VERDICT: Column = Column { at_mm: 22.0, anchor: Anchor::Start };
const MISS: Column = Column { at_mm: 68.5, anchor: Anchor::Start };
const INSIDE: Column = Column { at_mm: 120.0, anchor: Anchor::End };
const SHOTS: Column = Column { at_mm: INNER_MM, anchor: Anchor::End };

/// The shafts in the order of the journal.
pub struct Table<'a> {
    /// The shafts.
    pub shafts: &'a [ShaftReport],
    /// Those that spread wider than all others.
    pub wide: &'a [WideShaft],
    /// How far from the reference a shaft may land.
    pub tolerance: Millimetres,
    /// The reader's unit.
    pub ruler: Ruler,
}

impl Table<'_> {
    fn heading(&self, canvas: &mut Canvas, base: PaperPoint) {
        let miss = format!("miss, {}", self.ruler.unit().symbol);
        let cells = [
            (NAME, "shaft"),
            (VERDICT, "verdict"),
            (MISS, &miss),
            (INSIDE, "inside"),
            (SHOTS, "shots"),
        ];
        for (column, text) in cells {
            column.write(canvas, "quiet", base, QUIET_MM, text);
        }
    }

    /// The words of the shafts in one column, from the top.
    fn column(
        &self,
        canvas: &mut Canvas,
        first: PaperPoint,
        (column, class): (&Column, &str),
        text: impl Fn(&ShaftReport) -> Option<String>,
    ) {
        for (row, report) in self.shafts.iter().enumerate() {
            if let Some(text) = text(report) {
                column.write(canvas, class, down(first, row), TEXT_MM, &text);
            }
        }
    }

    fn columns(&self, canvas: &mut Canvas, first: PaperPoint) {
        let shot = |report: &ShaftReport| report.shots_total > 0;
        self.column(canvas, first, (&NAME, "strong"), |report| {
            Some(shortened(report.shaft.as_str(), TEXT_MM, NAME_MM / BOLD))
        });
        self.column(canvas, first, (&VERDICT, PLAIN), |report| {
            Some(wording::verdict(report, self.ruler))
        });
        self.column(canvas, first, (&MISS, PLAIN), |report| {
            shot(report).then(|| self.ruler.miss_bare(report.miss.mean))
        });
        self.column(canvas, first, (&INSIDE, PLAIN), |report| {
            shot(report).then(|| percent_short(report.within))
        });
        self.column(canvas, first, (&SHOTS, PLAIN), |report| {
            let is_wide = self.wide.iter().any(|wide| wide.shaft == report.shaft);
            Some(format!("{}{}", if is_wide { "*" } else { "" }, report.shots_total))
        });
    }

    fn note(&self) -> String {
        let tolerance = self.ruler.read(self.tolerance);
        let wide = if self.wide.is_empty() { "" } else { ", * too wide" };
        format!(
            "inside: how likely its mean miss is at most {tolerance}; shots: those that count{wide}"
        )
    }
}

impl Block for Table<'_> {
    fn height_mm(&self) -> f64 {
        ROW_MM * (self.shafts.len() as f64 + 2.0)
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let base = corner.moved(0.0, -QUIET_MM);
        self.heading(canvas, base);
        for row in 0..self.shafts.len() {
            let line = down(base, row).moved(0.0, -0.3 * ROW_MM);
            canvas.line("grid", Segment { from: line, to: line.moved(INNER_MM, 0.0) });
        }
        let first = down(base, 1);
        for (row, report) in self.shafts.iter().enumerate() {
            let at = down(first, row).moved(2.2, MIDDLE * TEXT_MM);
            glyphs::plain_shaft(canvas, report.verdict, at);
        }
        self.columns(canvas, first);
        let last = down(first, self.shafts.len());
        canvas.text("quiet", last, Anchor::Start, QUIET_MM, &self.note());
    }
}

/// So many rows lower.
fn down(base: PaperPoint, rows: usize) -> PaperPoint {
    base.moved(0.0, -ROW_MM * rows as f64)
}

impl Column {
    fn write(&self, canvas: &mut Canvas, class: &str, base: PaperPoint, size_mm: f64, text: &str) {
        canvas.text(class, base.moved(self.at_mm, 0.0), self.anchor, size_mm, text);
    }
}
