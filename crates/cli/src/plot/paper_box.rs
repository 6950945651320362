//! An upright rectangle on the sheet.

use super::paper_point::PaperPoint;

/// An upright rectangle on the sheet, mm of paper.
#[derive(Clone, Copy, Debug, PartialEq)]
#[expect(clippy::struct_field_names, reason = "a number carries its unit in its name")]
pub struct PaperBox {
    /// Its left edge, mm.
    pub left_mm: f64,
    /// Its lower edge, mm.
    pub bottom_mm: f64,
    /// Its right edge, mm.
    pub right_mm: f64,
    /// Its upper edge, mm.
    pub top_mm: f64,
}

impl PaperBox {
    /// The rectangle of this size about `centre`.
    pub fn around(centre: PaperPoint, width_mm: f64, height_mm: f64) -> Self {
        Self {
            left_mm: centre.x_mm - width_mm / 2.0,
            bottom_mm: centre.y_mm - height_mm / 2.0,
            right_mm: centre.x_mm + width_mm / 2.0,
            top_mm: centre.y_mm + height_mm / 2.0,
        }
    }

    /// Its middle.
    pub fn centre(self) -> PaperPoint {
        PaperPoint::new(
            f64::midpoint(self.left_mm, self.right_mm),
            f64::midpoint(self.bottom_mm, self.top_mm),
        )
    }

    /// The rectangle with all edges moved outward; inward where `by_mm` is negative.
    pub fn grown(self, by_mm: f64) -> Self {
        Self {
            left_mm: self.left_mm - by_mm,
            bottom_mm: self.bottom_mm - by_mm,
            right_mm: self.right_mm + by_mm,
            top_mm: self.top_mm + by_mm,
        }
    }

    /// Whether the two share more than an edge.
    pub fn overlaps(self, other: Self) -> bool {
        self.left_mm < other.right_mm
            && other.left_mm < self.right_mm
            && self.bottom_mm < other.top_mm
            && other.bottom_mm < self.top_mm
    }

    /// Whether `other` lies wholly inside.
    pub fn holds(self, other: Self) -> bool {
        self.left_mm <= other.left_mm
            && other.right_mm <= self.right_mm
            && self.bottom_mm <= other.bottom_mm
            && other.top_mm <= self.top_mm
    }

    /// The place in it that is nearest to `point`.
    pub fn nearest(self, point: PaperPoint) -> PaperPoint {
        PaperPoint::new(
            point.x_mm.clamp(self.left_mm, self.right_mm),
            point.y_mm.clamp(self.bottom_mm, self.top_mm),
        )
    }

    /// Whether `point` lies inside or on the edge.
    pub fn has(self, point: PaperPoint) -> bool {
        self.nearest(point) == point
    }
}
