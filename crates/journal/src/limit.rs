//! What a number in an entry may be.

use crate::What;

/// The largest value that is taken, with its unit: beyond it the unit or the point is wrong.
#[derive(Clone, Copy)]
pub(crate) struct Limit {
    most: f64,
    unit: &'static str,
}

impl Limit {
    /// A butt is hardly 3 m wide.
    pub const HIT: Self = Self { most: 3000.0, unit: "mm" };
    /// Further over, an arrow does not stick.
    pub const LEAN: Self = Self { most: 60.0, unit: "deg" };
    /// A reading that says less than this says nothing.
    pub const READ_SD: Self = Self { most: 1000.0, unit: "mm" };
    /// Likewise.
    pub const LEAN_SD: Self = Self { most: 60.0, unit: "deg" };
    /// Twice the longest distance of target archery.
    pub const DISTANCE: Self = Self { most: 200.0, unit: "m" };
    /// As far as a hit may be.
    pub const TOLERANCE: Self = Self { most: 3000.0, unit: "mm" };
    /// A whole turn: what is more was meant otherwise.
    pub const INDEX: Self = Self { most: 360.0, unit: "deg" };
    /// Longer than any arrow.
    pub const ARROW: Self = Self { most: 1500.0, unit: "mm" };
    /// A shaft further out of true is bent, and seen to be.
    pub const CROOKED: Self = Self { most: 20.0, unit: "mm" };
    /// The softest shaft sags by less; a spine of 500 is a sag of 0.5 in.
    pub const SAG: Self = Self { most: 3.0, unit: "in" };
    /// Parts of a bow move by less than its width.
    pub const BOW_MOVE: Self = Self { most: 300.0, unit: "mm" };
    /// Several times the heaviest arrow.
    pub const MASS: Self = Self { most: 5000.0, unit: "gr" };
    /// Four weeks: no glue for arrows takes longer.
    pub const CURE: Self = Self { most: 672.0, unit: "h" };
    /// Wider than any broadhead.
    pub const HEAD_WIDTH: Self = Self { most: 150.0, unit: "mm" };
    /// Nobody draws more.
    pub const DRAW: Self = Self { most: 200.0, unit: "lb" };
    /// Above the fastest bow.
    pub const SPEED: Self = Self { most: 200.0, unit: "m/s" };

    /// A value within the limit on either side of zero.
    pub fn either_way(self, value: f64) -> Result<f64, What> {
        let Self { most, unit } = self;
        match finite(value)? {
            value if value.abs() <= most => Ok(value),
            value => Err(What::Beyond { value, most, unit }),
        }
    }

    /// A value from zero on and within the limit.
    pub fn not_negative(self, value: f64) -> Result<f64, What> {
        let Self { most, unit } = self;
        match finite(value)? {
            value if (0.0..=most).contains(&value) => Ok(value),
            value => Err(What::Negative { value, most, unit }),
        }
    }

    /// A value above zero and within the limit.
    pub fn above_zero(self, value: f64) -> Result<f64, What> {
        let Self { most, unit } = self;
        match finite(value)? {
            value if value > 0.0 && value <= most => Ok(value),
            value => Err(What::NotAboveZero { value, most, unit }),
        }
    }
}

/// A value that is a number at all.
pub(crate) fn finite(value: f64) -> Result<f64, What> {
    if value.is_finite() { Ok(value) } else { Err(What::NotFinite) }
}
