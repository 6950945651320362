//! A straight line from one place on the sheet to another.

use super::paper_box::PaperBox;
use super::paper_point::PaperPoint;

/// A straight line between two places on the sheet.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Segment {
    /// One end.
    pub from: PaperPoint,
    /// The other end.
    pub to: PaperPoint,
}

impl Segment {
    /// How long it is, mm.
    pub fn length_mm(self) -> f64 {
        self.from.distance_mm(self.to)
    }

    /// What is left of it after its first `mm`.
    pub fn after(self, mm: f64) -> Self {
        let share = mm / self.length_mm();
        let along = |from: f64, to: f64| from + share * (to - from);
        let Self { from, to } = self;
        Self { from: PaperPoint::new(along(from.x_mm, to.x_mm), along(from.y_mm, to.y_mm)), to }
    }

    /// The scalar product of the two as displacements, mm².
    pub fn dot_mm2(self, other: Self) -> f64 {
        (self.to.x_mm - self.from.x_mm) * (other.to.x_mm - other.from.x_mm)
            + (self.to.y_mm - self.from.y_mm) * (other.to.y_mm - other.from.y_mm)
    }

    /// Whether the two cross at an inner point of both.
    pub fn crosses(self, other: Self) -> bool {
        self.parts(other.from, other.to) && other.parts(self.from, self.to)
    }

    /// Whether it runs through `area`, by cutting off what lies beyond each edge in turn (Liang and Barsky).
    pub fn touches(self, area: PaperBox) -> bool {
        let (dx, dy) = (self.to.x_mm - self.from.x_mm, self.to.y_mm - self.from.y_mm);
        let edges = [
            (-dx, self.from.x_mm - area.left_mm),
            (dx, area.right_mm - self.from.x_mm),
            (-dy, self.from.y_mm - area.bottom_mm),
            (dy, area.top_mm - self.from.y_mm),
        ];
        let (mut enter, mut leave) = (0.0_f64, 1.0_f64);
        for (speed, room) in edges {
            if speed == 0.0 && room < 0.0 {
                return false;
            } else if speed < 0.0 {
                enter = enter.max(room / speed);
            } else if speed > 0.0 {
                leave = leave.min(room / speed);
            }
        }
        enter <= leave
    }

    /// Whether `a` and `b` lie on different sides of the line through this segment.
    fn parts(self, a: PaperPoint, b: PaperPoint) -> bool {
        self.side(a) * self.side(b) < 0.0
    }

    /// Positive to the left of the line, negative to the right.
    fn side(self, point: PaperPoint) -> f64 {
        (self.to.x_mm - self.from.x_mm) * (point.y_mm - self.from.y_mm)
            - (self.to.y_mm - self.from.y_mm) * (point.x_mm - self.from.x_mm)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn segment(x0: f64, y0: f64, x1: f64, y1: f64) -> Segment {
        Segment { from: PaperPoint::new(x0, y0), to: PaperPoint::new(x1, y1) }
    }

    #[test]
    fn only_lines_that_meet_inside_both_cross() {
        let rising = segment(0.0, 0.0, 4.0, 4.0);
        assert!(rising.crosses(segment(0.0, 4.0, 4.0, 0.0)));
        assert!(!rising.crosses(segment(0.0, 4.0, 1.0, 3.0)));
        assert!(!rising.crosses(segment(0.0, 0.0, 4.0, 0.0)), "a shared end is no crossing");
    }

    #[test]
    fn a_line_touches_what_it_runs_through_and_nothing_else() {
        let area = PaperBox::around(PaperPoint::new(5.0, 5.0), 2.0, 2.0);
        assert!(segment(0.0, 5.0, 10.0, 5.0).touches(area));
        assert!(segment(5.0, 5.0, 5.1, 5.1).touches(area));
        assert!(!segment(0.0, 5.0, 3.9, 5.0).touches(area));
        assert!(!segment(0.0, 6.1, 10.0, 6.1).touches(area));
        assert!(!segment(0.0, 8.0, 8.0, 16.0).touches(area));
    }
}
