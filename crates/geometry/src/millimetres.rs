//! A length on or near the target face.

use std::fmt;
use std::ops::{Add, Div, Mul, Neg, Sub};

// All exact by definition.
const MM_PER_INCH: f64 = 25.4;
const MM_PER_FOOT: f64 = 304.8;
const MM_PER_YARD: f64 = 914.4;
const MM_PER_CM: f64 = 10.0;
const MM_PER_METRE: f64 = 1000.0;

/// A length in millimetres; the one unit of length inside the program.
///
/// Signed where it measures along an axis; every other function says what it refuses. Any double is
/// a length: whoever reads one from outside checks that it is finite.
///
/// # Source
/// The yard is 0.9144 m exactly, hence the foot 0.3048 m and the inch 25.4 mm: international yard
/// and pound agreement of 1959; A. Thompson and B. N. Taylor, *Guide for the Use of the
/// International System of Units*, NIST SP 811, 2008, Appendix B.
///
/// # Example
/// ```
/// use quarterturn_geometry::Millimetres;
///
/// assert_eq!(Millimetres::from_yards(20.0).metres(), 18.288);
/// assert_eq!(Millimetres::from_inches(1.0), Millimetres::new(25.4));
/// assert_eq!(format!("{:.1}", Millimetres::from_inches(0.3)), "7.6 mm");
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Millimetres(f64);

impl Millimetres {
    /// No length at all.
    pub const ZERO: Self = Self(0.0);

    /// A length of `mm` millimetres.
    pub const fn new(mm: f64) -> Self {
        Self(mm)
    }

    /// A length of `cm` centimetres.
    pub const fn from_cm(cm: f64) -> Self {
        Self(cm * MM_PER_CM)
    }

    /// A length of `m` metres.
    pub const fn from_metres(m: f64) -> Self {
        Self(m * MM_PER_METRE)
    }

    /// A length of `inches` inches.
    pub const fn from_inches(inches: f64) -> Self {
        Self(inches * MM_PER_INCH)
    }

    /// A length of `feet` feet.
    pub const fn from_feet(feet: f64) -> Self {
        Self(feet * MM_PER_FOOT)
    }

    /// A length of `yards` yards.
    pub const fn from_yards(yards: f64) -> Self {
        Self(yards * MM_PER_YARD)
    }

    /// The length in millimetres.
    pub const fn mm(self) -> f64 {
        self.0
    }

    /// The length in centimetres.
    pub const fn cm(self) -> f64 {
        self.0 / MM_PER_CM
    }

    /// The length in metres.
    pub const fn metres(self) -> f64 {
        self.0 / MM_PER_METRE
    }

    /// The length in inches.
    pub const fn inches(self) -> f64 {
        self.0 / MM_PER_INCH
    }

    /// The length in feet.
    pub const fn feet(self) -> f64 {
        self.0 / MM_PER_FOOT
    }

    /// The length in yards.
    pub const fn yards(self) -> f64 {
        self.0 / MM_PER_YARD
    }
}

impl Add for Millimetres {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for Millimetres {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl Neg for Millimetres {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

impl Mul<f64> for Millimetres {
    type Output = Self;
    fn mul(self, factor: f64) -> Self {
        Self(self.0 * factor)
    }
}

/// How many times the other length goes into this one.
impl Div for Millimetres {
    type Output = f64;
    fn div(self, other: Self) -> f64 {
        self.0 / other.0
    }
}

/// "25.4 mm"; a precision given to the formatter rounds the number.
impl fmt::Display for Millimetres {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match f.precision() {
            Some(decimals) => write!(f, "{:.decimals$} mm", self.0),
            None => write!(f, "{} mm", self.0),
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::tolerance::{ROUNDING, assert_within};

    /// Source: NIST SP 811 (2008), Appendix B.8: inch, foot and yard, exact.
    #[test]
    fn the_international_inch_foot_and_yard() {
        let exact = [
            (Millimetres::from_inches(1.0), 25.4),
            (Millimetres::from_feet(1.0), 304.8),
            (Millimetres::from_yards(1.0), 914.4),
            (Millimetres::from_inches(36.0), 914.4),
            (Millimetres::from_feet(3.0), 914.4),
            (Millimetres::from_metres(1.0), 1000.0),
            (Millimetres::from_cm(1.0), 10.0),
        ];
        for (length, mm) in exact {
            assert_within(length.mm(), mm, mm * ROUNDING);
        }
    }

    proptest! {
        #[test]
        fn every_unit_comes_back(value in -1e5..1e5) {
            let there_and_back = [
                Millimetres::new(value).mm(),
                Millimetres::from_cm(value).cm(),
                Millimetres::from_metres(value).metres(),
                Millimetres::from_inches(value).inches(),
                Millimetres::from_feet(value).feet(),
                Millimetres::from_yards(value).yards(),
            ];
            for back in there_and_back {
                assert_within(back, value, value.abs() * ROUNDING);
            }
        }
    }
}
