//! How far the balance point lies ahead of the middle.

use quarterturn_geometry::Millimetres;

use crate::BenchError;
use crate::error::above_zero;

/// Front of centre, percent of the length; negative behind the middle.
///
/// # Formula
/// 100 (B − L/2) / L, where B goes from the groove of the nock to the balance point and L from there to the end of the
/// shaft, insert and point left out.
/// # Errors
/// [`BenchError::NotAboveZero`], [`BenchError::OffTheShaft`].
/// # Source
/// ASTM F1435 (from the bottom of the slot of the nock, by the length of the trade association; its scope was at hand, its
/// formula is the AMO method as common practice has it). Another practice takes the length over the point, and comes to less.
pub fn front_of_centre_percent(
    length: Millimetres,
    balance: Millimetres,
) -> Result<f64, BenchError> {
    above_zero(length.mm())?;
    above_zero(balance.mm())?;
    if balance > length {
        return Err(BenchError::OffTheShaft { balance, length });
    }
    Ok(100.0 * (balance / length - 0.5))
}
