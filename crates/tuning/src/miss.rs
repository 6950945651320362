//! Where a shaft lands on average, from the reference, with what is not known of it.

use nalgebra::Matrix2;
use quarterturn_geometry::Offset;

/// The mean miss of a shaft at one index: bare minus reference, with the covariance of that estimate.
///
/// The covariance says how well the *mean* is known; single shots scatter more.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Miss {
    /// The estimate.
    pub mean: Offset,
    /// Its covariance, mm², x then y.
    pub covariance_mm2: Matrix2<f64>,
}
