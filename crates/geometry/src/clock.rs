//! A displacement as people read it: an hour and how far out.

use crate::index::HOUR_DEG;
use crate::{Angle, GeometryError, Millimetres, Offset, wrap};

const HOURS: f64 = 12.0;

/// An hour on the clock and a distance: "two o'clock, eight centimetres out".
///
/// The hour counts clockwise from 12 o'clock as the archer sees it
/// ([conventions](crate#conventions)); fractions are part of an hour, so half past two is 2.5. It
/// is exact as read; how finely it was read is a [`ReadingResolution`](crate::ReadingResolution).
///
/// # Example
/// ```
/// use quarterturn_geometry::{ClockReading, Millimetres};
///
/// let hit = ClockReading::new(3.0, Millimetres::from_cm(8.0))?.offset();
/// assert_eq!(hit.x_mm, 80.0);
/// assert_eq!(ClockReading::of(hit).hour(), 3.0);
/// # Ok::<(), quarterturn_geometry::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClockReading {
    hour: f64,
    distance: Millimetres,
}

impl ClockReading {
    /// A reading of `hour` o'clock, from 0 to 12 with 0 and 12 being the same, and `distance` out.
    ///
    /// # Errors
    /// [`GeometryError::Hour`] for an hour that no clock shows; [`GeometryError::Distance`] for a
    /// distance that is negative or not finite.
    pub fn new(hour: f64, distance: Millimetres) -> Result<Self, GeometryError> {
        if !(0.0..=HOURS).contains(&hour) {
            return Err(GeometryError::Hour { hour });
        }
        if !(distance.mm().is_finite() && distance >= Millimetres::ZERO) {
            return Err(GeometryError::Distance { distance });
        }
        Ok(Self { hour: wrap::positive(hour, HOURS), distance })
    }

    /// The reading of a finite displacement; 12 o'clock where there is none.
    pub fn of(offset: Offset) -> Self {
        Self { hour: offset.clock_angle().degrees() / HOUR_DEG, distance: offset.length() }
    }

    /// The hour, in [0, 12).
    pub const fn hour(self) -> f64 {
        self.hour
    }

    /// How far out, 0 mm or more.
    pub const fn distance(self) -> Millimetres {
        self.distance
    }

    /// The displacement that was read: x to the right, y up.
    pub fn offset(self) -> Offset {
        Offset::toward(Angle::from_degrees(self.hour * HOUR_DEG), self.distance)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::tolerance::{ROUNDING, assert_within};

    #[test]
    fn hours_that_no_clock_shows() {
        for hour in [-0.5, 12.5, f64::NAN, f64::INFINITY] {
            let refused = ClockReading::new(hour, Millimetres::new(80.0));
            assert!(matches!(refused, Err(GeometryError::Hour { .. })), "{hour}");
        }
    }

    #[test]
    fn distances_that_cannot_be() {
        for mm in [-1.0, f64::NAN, f64::INFINITY] {
            let refused = ClockReading::new(3.0, Millimetres::new(mm));
            assert!(matches!(refused, Err(GeometryError::Distance { .. })), "{mm}");
        }
    }

    #[test]
    fn twelve_and_zero_are_one_hour() {
        let distance = Millimetres::new(80.0);
        assert_eq!(ClockReading::new(12.0, distance), ClockReading::new(0.0, distance));
    }

    #[test]
    fn an_hour_is_always_below_twelve() {
        for x_mm in [-1e-15, -1e-16, -1e-17, -1e-300] {
            assert!(ClockReading::of(Offset::new(x_mm, 1.0)).hour() < HOURS);
        }
    }

    proptest! {
        #[test]
        fn a_reading_comes_back(hour in 0.0..12.0, mm in 0.1..3000.0) {
            let reading = ClockReading::new(hour, Millimetres::new(mm)).unwrap();
            let again = ClockReading::of(reading.offset());
            assert_within(wrap::signed(again.hour() - hour, HOURS), 0.0, HOURS * ROUNDING);
            assert_within(again.distance().mm(), mm, mm * ROUNDING);
        }

        #[test]
        fn a_displacement_comes_back(x_mm in -3000.0..3000.0, y_mm in -3000.0..3000.0) {
            let offset = Offset::new(x_mm, y_mm);
            let apart = ClockReading::of(offset).offset() - offset;
            assert_within(apart.length().mm(), 0.0, offset.length().mm() * ROUNDING);
        }
    }
}
