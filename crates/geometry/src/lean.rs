//! Where the tail of an arrow points away from its entry hole.

use crate::{Angle, ShaftDirection};

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

    /// How far the tail leans, whichever way; never negative: the angle of its
    /// [`ShaftDirection`] to straight.
    pub fn size(self) -> Angle {
        ShaftDirection::from(self).angle_to(ShaftDirection::straight())
    }

    /// Which way the tail leans, as a clock angle in [0, 2π): 0 = 12 o'clock (tail high),
    /// clockwise; 0 where there is no lean.
    pub fn clock_angle(self) -> Angle {
        let [x, y, _] = ShaftDirection::from(self).parts();
        Angle::from_radians(x.atan2(y)).positive()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tolerance::{ROUNDING, assert_within};

    /// By hand: sines of 0.3 and 0.4 make one of 0.5, 30 degrees, toward three parts left and four up.
    #[test]
    fn size_and_direction() {
        let lean = Lean {
            x: Angle::from_radians(-0.3_f64.asin()),
            y: Angle::from_radians(0.4_f64.asin()),
        };
        assert_within(lean.size().degrees(), 30.0, 30.0 * ROUNDING);
        let toward = 360.0 - 0.75_f64.atan().to_degrees();
        assert_within(lean.clock_angle().degrees(), toward, toward * ROUNDING);
        assert_eq!(Lean::default().size(), Angle::ZERO);
        assert_eq!(Lean::default().clock_angle(), Angle::ZERO);
    }
}
