//! How far a crooked end or a tilted insert throws the point off the axis of the shaft.

use quarterturn_geometry::{Angle, Millimetres};

use crate::BenchError;
use crate::error::above_zero;

/// How far an insert tilts that sits on an end out of square.
///
/// # Formula
/// θ = r / D: the end stands out by r on one side of the diameter D. 0.1 mm on 8 mm are 0.7°. For small angles: at 5°
/// it is 0.3 % more than the exact tangent gives.
/// # Errors
/// [`BenchError::NotAboveZero`] for such a diameter.
/// # Source
/// Plane geometry.
pub fn end_tilt(runout: Millimetres, diameter: Millimetres) -> Result<Angle, BenchError> {
    above_zero(diameter.mm())?;
    Ok(Angle::from_radians(runout / diameter))
}

/// How far the tip of a point stands off the axis that is tilted by `tilt` where it meets the shaft.
///
/// # Formula
/// e = ℓ θ, with the length ℓ from the end of the shaft to the tip; a gauge at the tip of the spun shaft reads twice
/// as much.
/// # Source
/// Plane geometry, for small angles: at 5° it is 0.1 % more than the exact sine gives.
pub fn point_throw(tilt: Angle, length: Millimetres) -> Millimetres {
    length * tilt.radians()
}
