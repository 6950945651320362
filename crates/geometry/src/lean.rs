//! Where the tail of an arrow points away from its entry hole.

use crate::Angle;

/// The lean of an arrow in the butt: x positive = tail to the right, y positive = tail high, as the
/// archer sees it ([conventions](crate#conventions)).
///
/// A lean that was not read is an absent `Lean`, never a zero one.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Lean {
    /// Tail to the right.
    pub x: Angle,
    /// Tail high.
    pub y: Angle,
}

impl Lean {
    /// A lean of `x_deg` to the right and `y_deg` up.
    pub const fn from_degrees(x_deg: f64, y_deg: f64) -> Self {
        Self { x: Angle::from_degrees(x_deg), y: Angle::from_degrees(y_deg) }
    }

    /// How far the tail leans, whichever way; never negative.
    ///
    /// # Formula
    /// √(x² + y²). It is right to 0.1 degrees up to 15 degrees, where a tape at the tail reads to
    /// half a degree.
    pub fn size(self) -> Angle {
        Angle::from_radians(self.x.radians().hypot(self.y.radians()))
    }

    /// Which way the tail leans, as a clock angle in [0, 2π): 0 = 12 o'clock (tail high),
    /// clockwise; 0 where there is no lean.
    pub fn clock_angle(self) -> Angle {
        Angle::from_radians(self.x.radians().atan2(self.y.radians())).positive()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tolerance::{ROUNDING, assert_within};

    #[test]
    fn size_and_direction() {
        let lean = Lean::from_degrees(-3.0, 4.0);
        assert_within(lean.size().degrees(), 5.0, 5.0 * ROUNDING);
        let toward = 360.0 - 0.75_f64.atan().to_degrees();
        assert_within(lean.clock_angle().degrees(), toward, toward * ROUNDING);
    }
}
