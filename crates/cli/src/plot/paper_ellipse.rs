//! An ellipse on the sheet.

use quarterturn_geometry::Angle;

use super::paper_point::PaperPoint;

/// An ellipse on the sheet, mm of paper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PaperEllipse {
    /// Its middle.
    pub centre: PaperPoint,
    /// Half its length, mm.
    pub semi_major_mm: f64,
    /// Half its width, mm.
    pub semi_minor_mm: f64,
    /// Where its length points, counter-clockwise from the right as the archer sees it.
    pub orientation: Angle,
}
