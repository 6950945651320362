//! Where the tail of an arrow points away from its entry hole.

use std::ops::Sub;

use crate::Angle;

/// The lean of an arrow in the butt: x positive = tail to the right, y positive = tail high, as the archer sees it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Lean {
    /// Tail to the right.
    pub x: Angle,
    /// Tail high.
    pub y: Angle,
}

impl Lean {
    /// A lean of `x_deg` to the right and `y_deg` up.
    pub fn from_degrees(x_deg: f64, y_deg: f64) -> Self {
        Self { x: Angle::from_degrees(x_deg), y: Angle::from_degrees(y_deg) }
    }
}

/// The lean relative to another arrow's, both read in one frame.
impl Sub for Lean {
    type Output = Self;
    fn sub(self, reference: Self) -> Self {
        Self { x: self.x - reference.x, y: self.y - reference.y }
    }
}
