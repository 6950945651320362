//! A small clock with the place of the mark, now and for the next shot.

use quarterturn_geometry::{Angle, Index};

use crate::plot::{Anchor, Canvas, PaperPoint, Segment};

/// Where a mark stands and where it goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dial {
    /// Where it stands now.
    pub now: Index,
    /// Where it goes.
    pub next: Index,
}

/// Draws the clock of this radius as it is seen from behind: an empty ring where the mark stands, a filled disc where it
/// goes.
pub fn dial(canvas: &mut Canvas, dial: Dial, centre: PaperPoint, radius_mm: f64) {
    canvas.circle("line", centre, radius_mm);
    for hour in 1..=12_u32 {
        let angle = Angle::from_degrees(f64::from(hour) * 30.0);
        let inner_mm = radius_mm * if hour.is_multiple_of(3) { 0.82 } else { 0.9 };
        let tick =
            Segment { from: centre.toward(angle, inner_mm), to: centre.toward(angle, radius_mm) };
        canvas.line("line", tick);
        if hour.is_multiple_of(3) {
            let size_mm = radius_mm * 0.3;
            let at = centre.toward(angle, radius_mm * 0.62).moved(0.0, -0.36 * size_mm);
            canvas.text("text", at, Anchor::Middle, size_mm, &hour.to_string());
        }
    }
    let place = |index: Index| centre.toward(index.angle(), radius_mm);
    canvas.circle("blank", place(dial.now), radius_mm * 0.14);
    canvas.circle("solid", place(dial.next), radius_mm * 0.14);
}
