//! For each arrow a dial with its vanes and a strip to wrap round it, in true size: where to glue.

use quarterturn_geometry::{Index, Millimetres};

use super::cells::cells;
use super::page::Page;
use super::sheet::Sheet;
use super::strip::Strip;
use crate::plot::{Anchor, Canvas, PaperBox, PaperPoint, Segment, shortened};
use crate::wording;

const CELL_MM: [f64; 2] = [88.0, 35.0];
/// The head without the lines of what is told, and one of those, mm.
const HEAD_MM: f64 = 8.0;
const LINE_MM: f64 = 3.8;
const STRIP_MM: f64 = 13.0;
const RADIUS_MM: f64 = 9.0;
const TEXT_MM: f64 = 2.8;

/// What stands above the arrows.
pub struct FletchHead<'a> {
    /// The journal.
    pub journal: &'a str,
    pub diameter: Millimetres,
    /// Where the cock vanes stand on the string.
    pub cock: Index,
    /// The order of the work, in lines that fit.
    pub told: Vec<String>,
}

/// One arrow.
pub struct FletchCell<'a> {
    pub shaft: &'a str,
    /// Where its mark stands on the string.
    pub mark: Index,
    /// Each vane, clockwise from the mark as seen from behind, the cock vane first.
    pub from_mark: &'a [Index],
}

impl FletchHead<'_> {
    fn height_mm(&self) -> f64 {
        HEAD_MM + LINE_MM * self.told.len() as f64
    }
}

/// The sheets, as many as it takes.
pub fn fletch_sheet(page: Page, head: &FletchHead<'_>, arrows: &[FletchCell<'_>]) -> Vec<Sheet> {
    let free = page.free();
    let below = PaperBox { top_mm: free.top_mm - head.height_mm(), ..free };
    let [columns, rows] = cells(below, CELL_MM);
    let purpose = format!(
        "For shafts {:.1} mm thick: where the vanes go, as a dial and a strip each.",
        head.diameter.mm()
    );
    let sheet = |arrows: &[FletchCell<'_>]| {
        page.sheet("Fletching", &purpose, |canvas, free| {
            draw_head(canvas, free, head);
            for (at, arrow) in arrows.iter().enumerate() {
                let corner = PaperPoint::new(
                    free.left_mm + (at % columns) as f64 * CELL_MM[0],
                    free.top_mm - head.height_mm() - (at / columns) as f64 * CELL_MM[1],
                );
                cell(canvas, corner, head, arrow);
            }
        })
    };
    arrows.chunks(columns * rows).map(sheet).collect()
}

fn draw_head(canvas: &mut Canvas, free: PaperBox, head: &FletchHead<'_>) {
    let corner = PaperPoint::new(free.left_mm, free.top_mm - 5.0);
    let title = format!(
        "Fletching: {}, cock vane at {}",
        shortened(head.journal, 5.2, 90.0),
        wording::mark(head.cock)
    );
    canvas.text("text", corner, Anchor::Start, 5.2, &title);
    for (line, text) in head.told.iter().enumerate() {
        let at = corner.moved(0.0, -5.5 - LINE_MM * line as f64);
        canvas.text("text", at, Anchor::Start, TEXT_MM, text);
    }
}

fn cell(canvas: &mut Canvas, corner: PaperPoint, head: &FletchHead<'_>, arrow: &FletchCell<'_>) {
    let name = shortened(arrow.shaft, 5.0, 26.0);
    canvas.text("text", corner.moved(0.0, -6.0), Anchor::Start, 5.0, &name);
    dial(canvas, corner.moved(14.0, -20.0), head, arrow);
    strip(canvas, corner.moved(34.0, -27.0), head.diameter, arrow.from_mark);
    let mark = format!("mark at {}", wording::mark(arrow.mark));
    let way = wording::turn(arrow.mark, head.cock);
    let way = way.map_or_else(|| "cock on the mark".to_owned(), |way| format!("cock {way}"));
    for (line, said) in [mark, way].iter().enumerate() {
        let at = corner.moved(34.0, -3.5 - 3.6 * line as f64);
        canvas.text("text", at, Anchor::Start, TEXT_MM, said);
    }
    let glued = corner.moved(38.0, -CELL_MM[1] + 3.6);
    canvas.text("quiet", glued, Anchor::Start, TEXT_MM, "glued _______  not before _________");
}

/// The clock from behind: the shaft in true size, the mark at its disc, the vanes as they stand on the string.
fn dial(canvas: &mut Canvas, centre: PaperPoint, head: &FletchHead<'_>, arrow: &FletchCell<'_>) {
    let shaft_mm = head.diameter.mm() / 2.0;
    canvas.circle("faint", centre, RADIUS_MM);
    canvas.circle("line", centre, shaft_mm);
    for hour in [12.0, 3.0, 6.0, 9.0] {
        let at = centre.toward(Index::from_hour(hour).angle(), RADIUS_MM + 2.6).moved(0.0, -0.9);
        canvas.text("quiet", at, Anchor::Middle, 2.4, &hour.to_string());
    }
    for (vane, from_mark) in arrow.from_mark.iter().enumerate() {
        let place = Index::from_degrees(arrow.mark.degrees() + from_mark.degrees()).angle();
        let [from, to] = [shaft_mm, RADIUS_MM - 1.5].map(|out_mm| centre.toward(place, out_mm));
        canvas.line(if vane == 0 { "bold" } else { "line" }, Segment { from, to });
        if vane == 0 {
            let at = centre.toward(place, RADIUS_MM - 1.2);
            canvas.circle("blank", at, 1.0);
        }
    }
    canvas.circle("solid", centre.toward(arrow.mark.angle(), shaft_mm), 0.9);
}

/// The strip, its lower left corner at `corner`: once round the shaft from the mark clockwise, as it is seen from behind,
/// its lower edge toward the nock.
fn strip(canvas: &mut Canvas, corner: PaperPoint, diameter: Millimetres, from_mark: &[Index]) {
    let strip = Strip::new(corner, diameter, STRIP_MM);
    strip.outline(canvas);
    strip.ends(canvas, "thin");
    for (vane, place) in from_mark.iter().enumerate() {
        let from = strip.at(place.degrees());
        let (class, high_mm) = if vane == 0 { ("bold", STRIP_MM) } else { ("line", 9.0) };
        canvas.line(class, Segment { from, to: from.moved(0.0, high_mm) });
    }
    canvas.text("text", corner.moved(0.0, -3.0), Anchor::Middle, 2.4, "M");
    if let Some(cock) = from_mark.first() {
        let above = strip.at(cock.degrees()).moved(0.0, STRIP_MM + 0.8);
        canvas.text("text", above, Anchor::Middle, 2.4, "C");
    }
    strip.toward_the_point(canvas);
}
