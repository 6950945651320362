//! The four marks by which a photo of the face is measured.

use quarterturn_photo::{Corner, Dot};

use crate::plot::{Canvas, PaperPoint};

/// A ring about a dot: its middle can be told to a fraction of its size from any side. How large the dot is tells which
/// corner it is.
pub fn photo_mark(canvas: &mut Canvas, at: PaperPoint, corner: Corner) {
    canvas.circle("solid", at, Dot::MARK.mm());
    canvas.circle("paper", at, Dot::WHITE.mm());
    canvas.circle("solid", at, corner.dot().radius().mm());
}
