//! What a picture is and what it says, in words above it.

use super::block::{Block, INNER_MM};
use super::canvas::Canvas;
use super::paper_point::PaperPoint;
use super::shape::{Anchor, PLAIN};
use super::text_width::{BOLD, shortened, wrapped};

const TITLE_MM: f64 = 5.2;
const TEXT_MM: f64 = 3.4;
const LEADING: f64 = 1.3;

/// A title with lines below it.
pub struct Heading {
    title: String,
    finding: Vec<String>,
    remarks: Vec<String>,
}

impl Heading {
    /// A heading: the title, what was found, and how it was come by.
    pub fn new(title: &str, finding: &str, remarks: &[String]) -> Self {
        let room_mm = INNER_MM / BOLD;
        Self {
            title: shortened(title, TITLE_MM, room_mm),
            finding: wrapped(finding, TEXT_MM, room_mm),
            remarks: remarks.iter().flat_map(|text| wrapped(text, TEXT_MM, INNER_MM)).collect(),
        }
    }
}

impl Block for Heading {
    fn height_mm(&self) -> f64 {
        let lines = self.finding.len() + self.remarks.len();
        LEADING * (TITLE_MM + TEXT_MM * lines as f64)
    }

    fn draw(&self, canvas: &mut Canvas, corner: PaperPoint) {
        let mut at = corner.moved(0.0, -TITLE_MM);
        canvas.text("strong", at, Anchor::Start, TITLE_MM, &self.title);
        at = corner.moved(0.0, TEXT_MM * (LEADING - 1.0) - LEADING * TITLE_MM);
        let finding = self.finding.iter().map(|line| ("strong", line));
        for (class, line) in finding.chain(self.remarks.iter().map(|line| (PLAIN, line))) {
            at = at.moved(0.0, -LEADING * TEXT_MM);
            canvas.text(class, at, Anchor::Start, TEXT_MM, line);
        }
    }
}
