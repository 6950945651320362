//! One sheet of paper, drawn.

use super::correction::Correction;
use super::helvetica::can_write;
use super::pen::Pen;
use crate::plot::{About, Canvas, Shape, svg};

/// A sheet as it will come out of the printer; corrected only when it is written.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// What is on it, in true millimetres.
    pub canvas: Canvas,
    /// What makes up for the printer.
    pub correction: Correction,
    /// What it is called.
    pub title: String,
    /// What it is for, in a sentence.
    pub purpose: String,
}

impl Sheet {
    /// Whether the font of a PDF has every letter on it.
    pub fn is_writable_in_pdf(&self) -> bool {
        fn all(shapes: &[Shape]) -> bool {
            shapes.iter().all(|shape| match shape {
                Shape::Text { text, .. } => can_write(text),
                Shape::Group { shapes, .. } | Shape::Clipped { shapes, .. } => all(shapes),
                _ => true,
            })
        }
        all(&self.canvas.shapes)
    }

    /// The sheet as an SVG file of the size of the paper.
    pub fn svg(&self) -> String {
        let about = About { id: "sheet", title: &self.title, finding: &self.purpose };
        svg(&self.canvas, self.correction.stretch(), &Pen::css(), about)
    }
}
