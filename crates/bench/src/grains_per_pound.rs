//! The mass of an arrow against the draw weight.

use crate::error::above_zero;
use crate::{BenchError, Grains};

/// Grains of arrow for each pound of draw weight, both with the point.
///
/// What is least is the bow maker's word; this crate knows no limit.
///
/// # Formula
/// m / F, m in grains, F in pounds of force.
/// # Errors
/// [`BenchError::NotAboveZero`] for such a draw weight.
/// # Source
/// Common practice.
pub fn grains_per_pound(arrow: Grains, draw_lbf: f64) -> Result<f64, BenchError> {
    Ok(arrow.gr() / above_zero(draw_lbf)?)
}
