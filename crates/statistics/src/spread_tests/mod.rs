//! Whether groups spread alike.

mod bartlett;
mod brown_forsythe;
mod excess;
mod ratio;

pub use bartlett::bartlett_test;
pub use brown_forsythe::{brown_forsythe_test, planar_brown_forsythe_test};
pub use excess::{ScatterExcess, scatter_excess};
pub use ratio::{SpreadRatio, spread_ratio};

use crate::{PooledSpread, SpreadError};

/// The variance of a group; refused where it has none.
fn variance(group: &PooledSpread) -> Result<f64, SpreadError> {
    let &PooledSpread { sum_of_squares, degrees_of_freedom, points } = group;
    if degrees_of_freedom == 0 {
        Err(SpreadError::TooFewPoints { points })
    } else if sum_of_squares > 0.0 && sum_of_squares.is_finite() {
        Ok(sum_of_squares / degrees_of_freedom as f64)
    } else {
        Err(SpreadError::NoScatter { sum_of_squares })
    }
}
