//! What was said of a shaft's miss, and whether it was true.

use nalgebra::Vector2;
use quarterturn_geometry::{Millimetres, Offset};

use crate::ShaftReport;

/// −2 ln 0.1: a planar normal lies within this squared Mahalanobis distance in 90 % of all cases.
const NINETY_PERCENT: f64 = 4.605_170_185_988_091;

/// One statement, and the truth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Said {
    /// The probability stated of being inside the tolerance.
    pub within: f64,
    /// Whether the shaft truly is.
    pub inside: bool,
    /// Whether the 90 % region of its miss holds the true one.
    pub covered: bool,
}

impl Said {
    /// What `report` says, held against the true miss.
    pub fn of(report: &ShaftReport, truth: Offset, tolerance: Millimetres) -> Self {
        let off = truth - report.miss.mean;
        let off = Vector2::new(off.x_mm, off.y_mm);
        let precision = report.miss.covariance_mm2.try_inverse();
        let squared = precision.map_or(f64::INFINITY, |precision| off.dot(&(precision * off)));
        Self {
            within: report.within,
            inside: truth.length() <= tolerance,
            covered: squared <= NINETY_PERCENT,
        }
    }
}
