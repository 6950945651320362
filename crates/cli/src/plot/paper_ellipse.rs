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
    /// The clock angle of its length: 0 = up, clockwise as the archer sees it.
    pub orientation: Angle,
}
