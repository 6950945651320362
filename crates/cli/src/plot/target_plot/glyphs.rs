//! The marks of the target plot; each differs from the others in shape and not in colour alone.

use quarterturn_geometry::{Angle, Lean};
use quarterturn_tuning::Verdict;

use super::hits::HitKind;
use crate::plot::canvas::Canvas;
use crate::plot::paper_box::PaperBox;
use crate::plot::paper_point::PaperPoint;
use crate::plot::segment::Segment;
use crate::wording;

/// How long a tail is drawn, mm of paper for a degree.
const TAIL_MM_PER_DEG: f64 = 1.1;
/// How much room the mark of a shaft takes, mm.
pub const SHAFT_MM: f64 = 4.0;

/// The estimated miss of a shaft: a disc to keep, an empty diamond while open, a crossed square to retire.
pub fn shaft(canvas: &mut Canvas, verdict: Verdict, at: PaperPoint) {
    canvas.circle("halo", at, SHAFT_MM / 2.0);
    sized(canvas, verdict, at, 1.0);
}

/// The same on an empty ground.
pub fn plain_shaft(canvas: &mut Canvas, verdict: Verdict, at: PaperPoint) {
    sized(canvas, verdict, at, 1.0);
}

/// The same where many stand close to one another.
pub fn small_shaft(canvas: &mut Canvas, verdict: Verdict, at: PaperPoint) {
    sized(canvas, verdict, at, 0.65);
}

fn sized(canvas: &mut Canvas, verdict: Verdict, at: PaperPoint, size: f64) {
    let class = wording::verdict(verdict);
    match verdict {
        Verdict::Keep => canvas.circle(class, at, 1.55 * size),
        Verdict::Open(_) => {
            let corners = [(0.0, 1.75), (1.75, 0.0), (0.0, -1.75), (-1.75, 0.0)];
            let corner = |(right, up): (f64, f64)| at.moved(right * size, up * size);
            canvas.polygon(class, &corners.map(corner));
        }
        Verdict::Retire(_) => {
            canvas.rectangle(class, PaperBox::around(at, 2.9 * size, 2.9 * size));
            canvas.line("strike", through(at, 0.8 * size, 0.8 * size));
            canvas.line("strike", through(at, 0.8 * size, -0.8 * size));
        }
    }
}

/// A hit: filled where it speaks for its shaft now, smaller and grey elsewhere, an empty ring where it is left out.
/// A line runs from it to where the tail points.
pub fn hit(canvas: &mut Canvas, kind: HitKind, at: PaperPoint, tail: Option<Lean>) {
    if let Some(lean) = tail {
        self::tail(canvas, kind, at, lean);
    }
    dot(canvas, kind, at);
}

/// The line from a hit to where its tail points.
pub fn tail(canvas: &mut Canvas, kind: HitKind, at: PaperPoint, lean: Lean) {
    let [right_mm, up_mm] = [lean.x, lean.y].map(|angle| angle.degrees() * TAIL_MM_PER_DEG);
    canvas.line(kind.class(), Segment { from: at, to: at.moved(right_mm, up_mm) });
}

/// A hit without its tail.
pub fn dot(canvas: &mut Canvas, kind: HitKind, at: PaperPoint) {
    let radius_mm = match kind {
        HitKind::Judged => 0.75,
        HitKind::Other => 0.6,
        HitKind::LeftOut => 0.85,
    };
    canvas.circle(kind.class(), at, radius_mm);
}

/// A hit far from the others of its shaft at that mark: a ring round it.
pub fn far(canvas: &mut Canvas, at: PaperPoint) {
    canvas.circle("far", at, 1.7);
}

/// Where a shaft first landed: a small empty square.
pub fn first(canvas: &mut Canvas, at: PaperPoint) {
    canvas.rectangle("first", PaperBox::around(at, 1.8, 1.8));
}

/// An arrow head at the edge of the picture, toward the clock angle where something lies outside.
pub fn outward(canvas: &mut Canvas, class: &str, at: PaperPoint, direction: Angle) {
    let (sin, cos) = direction.sin_cos();
    let corner = |along_mm: f64, across_mm: f64| {
        at.moved(sin * along_mm + cos * across_mm, cos * along_mm - sin * across_mm)
    };
    canvas.polygon(
        class,
        &[corner(2.4, 0.0), corner(-2.2, 1.3), corner(-1.2, 0.0), corner(-2.2, -1.3)],
    );
}

/// The fletched reference: a star of three vanes.
pub fn reference(canvas: &mut Canvas, at: PaperPoint) {
    for deg in [0.0, 120.0, 240.0] {
        let (sin, cos) = Angle::from_degrees(deg).sin_cos();
        canvas.line("reference", Segment { from: at, to: at.moved(2.6 * sin, 2.6 * cos) });
    }
}

/// The spot aimed at: a small ring.
pub fn spot(canvas: &mut Canvas, at: PaperPoint) {
    canvas.circle("spot", at, 1.5);
}

/// The common offset: an upright cross.
pub fn common(canvas: &mut Canvas, at: PaperPoint) {
    canvas.line("common", through(at, 2.4, 0.0));
    canvas.line("common", through(at, 0.0, 2.4));
}

/// A bar with ends, `length_mm` long, to the right of `at`.
pub fn bar(canvas: &mut Canvas, at: PaperPoint, length_mm: f64) {
    canvas.line("axis", Segment { from: at, to: at.moved(length_mm, 0.0) });
    for end in [at, at.moved(length_mm, 0.0)] {
        canvas.line("axis", through(end, 0.0, 1.0));
    }
}

fn through(at: PaperPoint, right_mm: f64, up_mm: f64) -> Segment {
    Segment { from: at.moved(-right_mm, -up_mm), to: at.moved(right_mm, up_mm) }
}
