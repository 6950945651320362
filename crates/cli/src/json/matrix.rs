//! Displacements and covariances as numbers in brackets.

use quarterturn_geometry::Offset;
use quarterturn_tuning::Miss;

/// `[x, y]`, mm.
pub fn pair(offset: Offset) -> [f64; 2] {
    [plain(offset.x_mm), plain(offset.y_mm)]
}

/// `[[xx, xy], [yx, yy]]`, mm².
pub fn covariance(miss: &Miss) -> [[f64; 2]; 2] {
    let matrix = &miss.covariance_mm2;
    [[plain(matrix.m11), plain(matrix.m12)], [plain(matrix.m21), plain(matrix.m22)]]
}

/// The number without a minus before a zero.
fn plain(number: f64) -> f64 {
    number + 0.0
}
