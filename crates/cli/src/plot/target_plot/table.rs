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

    fn row(&self, canvas: &mut Canvas, base: PaperPoint, report: &ShaftReport) {
        glyphs::shaft(canvas, report.verdict, base.moved(2.2, MIDDLE * TEXT_MM));
        let name = shortened(report.shaft.as_str(), TEXT_MM, NAME_MM / BOLD);
        NAME.write(canvas, "strong", base, TEXT_MM, &name);
        let verdict = wording::verdict(report, self.ruler);
        VERDICT.write(canvas, PLAIN, base, TEXT_MM, &verdict);
        let wide = if self.wide.iter().any(|wide| wide.shaft == report.shaft) { "*" } else { "" };
        SHOTS.write(canvas, PLAIN, base, TEXT_MM, &format!("{wide}{}", report.shots_total));
        if report.shots_total > 0 {
            MISS.write(canvas, PLAIN, base, TEXT_MM, &self.ruler.miss_bare(report.miss.mean));
            INSIDE.write(canvas, PLAIN, base, TEXT_MM, &percent_short(report.within));
        }
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
        let mut base = corner.moved(0.0, -QUIET_MM);
        self.heading(canvas, base);
        for report in self.shafts {
            let line = base.moved(0.0, -0.3 * ROW_MM);
            canvas.line("grid", Segment { from: line, to: line.moved(INNER_MM, 0.0) });
            base = base.moved(0.0, -ROW_MM);
            self.row(canvas, base, report);
        }
        base = base.moved(0.0, -ROW_MM);
        canvas.text("quiet", base, Anchor::Start, QUIET_MM, &self.note());
    }
}

impl Column {
    fn write(&self, canvas: &mut Canvas, class: &str, base: PaperPoint, size_mm: f64, text: &str) {
        canvas.text(class, base.moved(self.at_mm, 0.0), self.anchor, size_mm, text);
    }
}
