//! Labels to cut out and tape on: each shaft's name and where its mark stands.

use super::cells::cells;
use super::page::Page;
use super::sheet::Sheet;
use crate::plot::{Anchor, Canvas, PaperBox, PaperPoint, shortened};

const LABEL_MM: [f64; 2] = [44.0, 15.0];

/// What stands on a label.
pub struct Label {
    /// The shaft.
    pub shaft: String,
    /// A line below it.
    pub said: String,
}

/// Labels, on as many sheets as it takes.
pub fn labels(page: Page, labels: &[Label]) -> Vec<Sheet> {
    let free = page.free();
    let [columns, rows] = cells(free, LABEL_MM);
    let purpose = "Labels to cut out and tape round the shafts.";
    let sheet = |labels: &[Label]| {
        page.sheet("Labels", purpose, |canvas, free| {
            for (at, label) in labels.iter().enumerate() {
                let left_mm = free.left_mm + (at % columns) as f64 * LABEL_MM[0];
                let top_mm = free.top_mm - (at / columns) as f64 * LABEL_MM[1];
                draw(canvas, PaperPoint::new(left_mm, top_mm), label);
            }
        })
    };
    labels.chunks(columns * rows).map(sheet).collect()
}

fn draw(canvas: &mut Canvas, corner: PaperPoint, label: &Label) {
    let [width_mm, height_mm] = LABEL_MM;
    let area = PaperBox {
        left_mm: corner.x_mm,
        bottom_mm: corner.y_mm - height_mm,
        right_mm: corner.x_mm + width_mm,
        top_mm: corner.y_mm,
    };
    canvas.rectangle("cut", area);
    let name = shortened(&label.shaft, 6.5, width_mm - 4.0);
    canvas.text("text", corner.moved(2.0, -7.5), Anchor::Start, 6.5, &name);
    let said = shortened(&label.said, 2.6, width_mm - 4.0);
    canvas.text("text", corner.moved(2.0, -12.5), Anchor::Start, 2.6, &said);
}
