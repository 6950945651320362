//! How finely a displacement was read.

use nalgebra::Matrix2;

use crate::index::HOUR_DEG;
use crate::{Angle, GeometryError, Millimetres, Offset};

/// The steps in which a direction and a distance were read: "to half an hour and half a centimetre".
///
/// # Formula
/// A reading to the nearest step is off by up to half of it, any such error as likely: its variance is step²/12. So
/// along the displacement the variance is d²/12, across it (rα)²/12, r the distance out: **a clock reading is the worse
/// the farther out it is**.
///
/// # Source
/// The variance of rounding: Joint Committee for Guides in Metrology, 2008, Evaluation of measurement data (GUM),
/// section 4.3.7 (from memory).
///
/// # Example
/// ```
/// use quarterturn_geometry::{ClockReading, Millimetres, ReadingResolution};
///
/// let resolution = ReadingResolution::of_clock(0.5, Millimetres::new(5.0))?;
/// let hit = ClockReading::new(3.0, Millimetres::new(80.0))?;
/// let covariance_mm2 = resolution.covariance_mm2(hit.offset());
/// let sd = [0, 1].map(|axis| format!("{:.1}", covariance_mm2[(axis, axis)].sqrt()));
/// assert_eq!(sd, ["1.4", "6.0"]); // across, the hour; along, the tape
/// # Ok::<(), quarterturn_geometry::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReadingResolution {
    direction: Angle,
    distance: Millimetres,
}

impl ReadingResolution {
    /// A direction read in steps of `direction`, at most a quarter turn, and a distance in steps of `distance`.
    ///
    /// # Errors
    /// [`GeometryError::Steps`] for a step that is negative, too large or not finite; 0 is exact.
    pub fn new(direction: Angle, distance: Millimetres) -> Result<Self, GeometryError> {
        let fits = (0.0..=90.0).contains(&direction.degrees())
            && (0.0..f64::INFINITY).contains(&distance.mm());
        if fits {
            Ok(Self { direction, distance })
        } else {
            Err(GeometryError::Steps { direction_deg: direction.degrees(), distance })
        }
    }

    /// The same with the direction in steps of `hours`.
    ///
    /// # Errors
    /// As [`new`](Self::new).
    pub fn of_clock(hours: f64, distance: Millimetres) -> Result<Self, GeometryError> {
        Self::new(Angle::from_degrees(hours * HOUR_DEG), distance)
    }

    /// The covariance, mm², x then y, of a displacement that was read as `read`.
    ///
    /// To first order in the direction's step; for half an hour what is left out is below a hundredth.
    pub fn covariance_mm2(self, read: Offset) -> Matrix2<f64> {
        let length_mm = read.length().mm();
        let variance = |step: f64| step * step / 12.0;
        let along = variance(self.distance.mm());
        let across = variance(length_mm * self.direction.radians());
        // From 12 o'clock, where along is up, to where it was read.
        let (sin, cos) = read.clock_angle().sin_cos();
        let mixed = (along - across) * sin * cos;
        Matrix2::new(
            along * sin * sin + across * cos * cos,
            mixed,
            mixed,
            along * cos * cos + across * sin * sin,
        )
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::tolerance::{FIRST_ORDER, ROUNDING, assert_within};

    #[test]
    fn steps_that_cannot_be() {
        for (degrees, mm) in
            [(-1.0, 1.0), (90.1, 1.0), (f64::NAN, 1.0), (1.0, -1.0), (1.0, f64::INFINITY)]
        {
            let refused =
                ReadingResolution::new(Angle::from_degrees(degrees), Millimetres::new(mm));
            assert!(matches!(refused, Err(GeometryError::Steps { .. })), "{degrees} {mm}");
        }
        let exact = ReadingResolution::new(Angle::ZERO, Millimetres::ZERO).unwrap();
        assert_eq!(exact.covariance_mm2(Offset::new(3.0, 4.0)), Matrix2::zeros());
    }

    /// By hand: half an hour is 15 degrees or 0.261799 radians; at 80 mm 20.94 mm, over the root of 12 that is 6.046 mm.
    #[test]
    fn half_an_hour_at_eight_centimetres() {
        let resolution = ReadingResolution::of_clock(0.5, Millimetres::new(5.0)).unwrap();
        let at = |x_mm, y_mm| resolution.covariance_mm2(Offset::new(x_mm, y_mm));
        assert_within(at(80.0, 0.0)[(1, 1)].sqrt(), 6.045_998, 1e-6);
        assert_within(at(80.0, 0.0)[(0, 0)].sqrt(), 1.443_376, 1e-6);
        assert_within(at(0.0, 160.0)[(0, 0)].sqrt(), 12.091_996, 1e-6);
        assert_within(at(0.0, 0.0)[(0, 0)].sqrt(), 0.0, 0.0);
    }

    /// Planted: all that a reading may have been, evenly spread over its step, has this covariance about it.
    #[test]
    fn the_spread_of_what_may_have_been_read() {
        let (step_deg, step_mm, read_deg, read_mm) = (15.0, 5.0, 77.0, 120.0);
        let resolution =
            ReadingResolution::new(Angle::from_degrees(step_deg), Millimetres::new(step_mm));
        let read = Offset::toward(Angle::from_degrees(read_deg), Millimetres::new(read_mm));
        let part = |i: i32| (f64::from(i) + 0.5) / 100.0 - 0.5;
        let mut sums = Matrix2::zeros();
        for (i, j) in (0..100).flat_map(|i| (0..100).map(move |j| (i, j))) {
            let angle = Angle::from_degrees(read_deg + step_deg * part(i));
            let off = Offset::toward(angle, Millimetres::new(read_mm + step_mm * part(j))) - read;
            let off = nalgebra::Vector2::new(off.x_mm, off.y_mm);
            sums += off * off.transpose() / 1e4;
        }
        let said = resolution.unwrap().covariance_mm2(read);
        assert_within((said - sums).norm(), 0.0, FIRST_ORDER * said.norm());
    }

    proptest! {
        #[test]
        fn turning_turns_the_covariance(x_mm in -300.0..300.0, y_mm in -300.0..300.0, turn in -360.0..360.0) {
            let resolution = ReadingResolution::of_clock(1.0, Millimetres::new(5.0)).unwrap();
            let read = Offset::new(x_mm, y_mm);
            let turn = Angle::from_degrees(turn);
            let rotation = nalgebra::Rotation2::new(turn.radians());
            let expected = rotation.matrix() * resolution.covariance_mm2(read) * rotation.matrix().transpose();
            let turned = resolution.covariance_mm2(read.rotated(turn));
            assert_within((turned - expected).norm(), 0.0, 10.0 * ROUNDING * expected.norm());
        }
    }
}
