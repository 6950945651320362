//! For each shaft a dial and a strip to wrap round it, in true size, with the present and the new index.

use quarterturn_geometry::{Index, Millimetres};

use super::cells::cells;
use super::dial::{self, Dial};
use super::page::Page;
use super::sheet::Sheet;
use super::strip::Strip;
use crate::plot::{Anchor, Canvas, PaperBox, PaperPoint, Segment, shortened};
use crate::wording;

const CELL_MM: [f64; 2] = [88.0, 40.0];
const HEAD_MM: f64 = 24.0;
const STRIP_MM: f64 = 14.0;

/// A shaft whose mark stands somewhere and goes somewhere.
pub struct Turn<'a> {
    /// Whose it is.
    pub shaft: &'a str,
    /// Where it stands and goes.
    pub dial: Dial,
}

impl<'a> Turn<'a> {
    /// The turn of a shaft.
    pub fn new(shaft: &'a str, now: Index, next: Index) -> Self {
        Self { shaft, dial: Dial { now, next } }
    }
}

/// Dials and strips for shafts of this outer diameter, on as many sheets as it takes.
pub fn dials(page: Page, diameter: Millimetres, turns: &[Turn<'_>]) -> Vec<Sheet> {
    let free = page.free();
    let below = PaperBox { top_mm: free.top_mm - HEAD_MM, ..free };
    let [columns, rows] = cells(below, CELL_MM);
    let purpose = format!(
        "For shafts {:.1} mm thick: a dial and a strip each, with the present and the new index.",
        diameter.mm()
    );
    let sheet = |turns: &[Turn<'_>]| {
        page.sheet("Dials and strips", &purpose, |canvas, free| {
            head(canvas, free, diameter);
            for (at, turn) in turns.iter().enumerate() {
                let corner = PaperPoint::new(
                    free.left_mm + (at % columns) as f64 * CELL_MM[0],
                    free.top_mm - HEAD_MM - (at / columns) as f64 * CELL_MM[1],
                );
                cell(canvas, corner, diameter, turn);
            }
        })
    };
    turns.chunks(columns * rows).map(sheet).collect()
}

fn head(canvas: &mut Canvas, free: PaperBox, diameter: Millimetres) {
    let corner = PaperPoint::new(free.left_mm, free.top_mm - 5.0);
    let title = format!("Dials and strips for shafts {:.1} mm thick", diameter.mm());
    canvas.text("text", corner, Anchor::Start, 5.2, &title);
    let told = [
        "Dial: stand the nock end in the hole, nock top at 12; the ink mark is at the ring now, and goes to the disc.",
        "Strip: wrap it round the shaft by the nock, arrow toward the point, MARK on the ink mark. Turn the nock until its top",
        "stands at the filled triangle; now it stands at the empty one. A number is the hour at which the mark then stands.",
    ];
    for (line, text) in told.into_iter().enumerate() {
        canvas.text("text", corner.moved(0.0, -5.5 - 3.8 * line as f64), Anchor::Start, 2.8, text);
    }
}

fn cell(canvas: &mut Canvas, corner: PaperPoint, diameter: Millimetres, turn: &Turn<'_>) {
    let name = shortened(turn.shaft, 5.0, 26.0);
    canvas.text("text", corner.moved(0.0, -6.0), Anchor::Start, 5.0, &name);
    let said = wording::instruction(turn.dial.now, turn.dial.next);
    canvas.text("text", corner.moved(0.0, -CELL_MM[1] + 3.0), Anchor::Start, 2.8, &said);
    let centre = corner.moved(16.0, -20.0);
    dial::dial(canvas, turn.dial, centre, 12.0);
    canvas.circle("cut", centre, diameter.mm() / 2.0);
    strip(canvas, corner.moved(36.0, -28.0), diameter, turn.dial);
}

/// The strip, its lower left corner at `corner`: once round the shaft from the mark clockwise, as it is seen from behind,
/// its lower edge toward the nock.
///
/// Where the nock's top meets it at the clock angle α from the mark, the mark stands at −α.
fn strip(canvas: &mut Canvas, corner: PaperPoint, diameter: Millimetres, dial: Dial) {
    let strip = Strip::new(corner, diameter, STRIP_MM);
    strip.outline(canvas);
    let at = |index: Index| strip.at((360.0 - index.degrees()) % 360.0);
    for hour in 0..12_u32 {
        let from = at(Index::from_hour(f64::from(hour)));
        let tick_mm = if hour.is_multiple_of(3) { 2.5 } else { 1.5 };
        canvas.line("line", Segment { from, to: from.moved(0.0, tick_mm) });
        if hour.is_multiple_of(3) && hour > 0 {
            canvas.text("text", from.moved(0.0, 6.2), Anchor::Middle, 2.6, &hour.to_string());
        }
    }
    strip.ends(canvas, "bold");
    let named = corner.moved(1.0, STRIP_MM - 3.2);
    canvas.text("text", named, Anchor::Start, 2.4, "MARK, 12");
    pointer(canvas, "blank", at(dial.now));
    pointer(canvas, "solid", at(dial.next));
    strip.toward_the_point(canvas);
}

/// A triangle on the strip that points at a place on its lower edge.
fn pointer(canvas: &mut Canvas, class: &str, at: PaperPoint) {
    let tip = at.moved(0.0, 2.7);
    canvas.polygon(class, &[tip, tip.moved(-1.2, 2.6), tip.moved(1.2, 2.6)]);
}
