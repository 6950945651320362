//! The four marks by which a photo of the face is measured.

use crate::plot::{Canvas, PaperPoint};

/// How far a mark reaches from its middle, mm.
pub const RADIUS_MM: f64 = 6.0;

/// A disc with a ring cut out of it: its middle can be told to a fraction of its size from any side.
pub fn photo_mark(canvas: &mut Canvas, at: PaperPoint) {
    canvas.circle("solid", at, RADIUS_MM);
    canvas.circle("blank", at, RADIUS_MM * 0.6);
    canvas.circle("solid", at, RADIUS_MM * 0.25);
}
