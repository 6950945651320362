//! The index of a shaft: where its ink mark stands on the string.

use std::fmt;

use crate::{Angle, Positions};

/// The clock angle of the builder's ink mark on the **shaft** when the arrow sits on the string.
///
/// 0 = 12 o'clock, clockwise as the archer sees it, in [0, 360) degrees. Kept in degrees, because that is what
/// people and files say, and what is said must come back unchanged.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Index {
    deg: f64,
}

impl Index {
    /// The mark at 12 o'clock.
    pub const TWELVE: Self = Self { deg: 0.0 };

    /// The mark at `deg` degrees clockwise from 12 o'clock; whole turns are taken off.
    pub fn from_degrees(deg: f64) -> Self {
        let turned = deg.rem_euclid(360.0);
        // A tiny negative angle rounds up to a whole turn.
        Self { deg: if turned < 360.0 { turned } else { 0.0 } }
    }

    /// The mark at `hour` o'clock, 12 and 0 being the same.
    pub fn from_hour(hour: f64) -> Self {
        Self::from_degrees(hour * 30.0)
    }

    /// Degrees clockwise from 12 o'clock, in [0, 360).
    pub const fn degrees(self) -> f64 {
        self.deg
    }

    /// Hours past 12 o'clock, in [0, 12).
    pub fn hours(self) -> f64 {
        self.deg / 30.0
    }

    /// The clock angle, clockwise from 12 o'clock.
    pub fn angle(self) -> Angle {
        Angle::from_degrees(self.deg)
    }

    /// The shorter way for the mark from here to `other`, clockwise positive, in (−180, 180] degrees.
    pub fn turn_to(self, other: Self) -> Angle {
        let turned = (other.deg - self.deg).rem_euclid(360.0);
        Angle::from_degrees(if turned > 180.0 { turned - 360.0 } else { turned })
    }

    /// Whether `other` is nearer than half a position.
    pub fn is_near(self, other: Self, positions: Positions) -> bool {
        // Half a position itself belongs to it: the tiny excess is what division leaves.
        self.turn_to(other).degrees().abs() <= positions.step_deg() / 2.0 + 1e-9
    }
}

/// "4 o'clock (120 deg)"; between the hours "half past 4 (135 deg)" or only the degrees.
impl fmt::Display for Index {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let halves = self.deg / 15.0;
        let hour = match self.hours().floor() {
            h if h < 1.0 => 12.0,
            h => h,
        };
        match () {
            () if halves.fract() != 0.0 => write!(f, "{} deg", self.deg),
            () if halves % 2.0 == 0.0 => write!(f, "{hour} o'clock ({} deg)", self.deg),
            () => write!(f, "half past {hour} ({} deg)", self.deg),
        }
    }
}
