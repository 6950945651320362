//! The units that people type, and what they are worth.

use super::QuantityFault;
use crate::list;

/// What a unit measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Dimension {
    /// In millimetres inside.
    Length,
    /// In degrees inside.
    Angle,
    /// In grains inside.
    Mass,
    /// In metres per second inside.
    Speed,
}

/// A unit as it is typed.
#[derive(Debug, PartialEq)]
pub struct Unit {
    /// How it is typed.
    pub symbol: &'static str,
    /// What it measures.
    pub dimension: Dimension,
    /// How many of its dimension's base unit it is.
    base: f64,
    /// How people write it elsewhere.
    elsewhere: &'static [&'static str],
}

/// All of them, each dimension in the order in which it is offered.
///
/// The inch (25.4 mm), yard, foot, grain (64.79891 mg) and pound (7000 gr) are exact by the international yard
/// and pound agreement of 1959.
static UNITS: [Unit; 12] = {
    use Dimension::{Angle, Length, Mass, Speed};
    const fn unit(
        symbol: &'static str,
        dimension: Dimension,
        base: f64,
        elsewhere: &'static [&'static str],
    ) -> Unit {
        Unit { symbol, dimension, base, elsewhere }
    }
    [
        unit("mm", Length, 1.0, &["millimetre", "millimeter", "millimetres", "millimeters"]),
        unit("cm", Length, 10.0, &["centimetre", "centimeter", "centimetres", "centimeters"]),
        unit("in", Length, 25.4, &["inch", "inches", "\"", "″"]),
        unit("ft", Length, 304.8, &["foot", "feet", "'", "′"]),
        unit("yd", Length, 914.4, &["yard", "yards", "yds", "y"]),
        unit("m", Length, 1000.0, &["metre", "meter", "metres", "meters"]),
        unit("deg", Angle, 1.0, &["degree", "degrees", "°"]),
        unit("gr", Mass, 1.0, &["grain", "grains", "gn", "grs"]),
        unit("g", Mass, 1000.0 / 64.798_91, &["gram", "grams", "gramme", "grammes"]),
        unit("lb", Mass, 7000.0, &["pound", "pounds", "lbs"]),
        unit("fps", Speed, 0.3048, &["ft/s"]),
        unit("m/s", Speed, 1.0, &["mps"]),
    ]
};

impl Unit {
    /// Millimetres.
    pub const MILLIMETRE: &'static Self = &UNITS[0];
    /// Centimetres.
    pub const CENTIMETRE: &'static Self = &UNITS[1];
    /// Inches.
    pub const INCH: &'static Self = &UNITS[2];
    /// Yards.
    pub const YARD: &'static Self = &UNITS[4];
    /// Degrees.
    pub const DEGREE: &'static Self = &UNITS[6];

    /// Grams.
    pub const GRAM: &'static Self = &UNITS[8];

    /// The unit that is typed `symbol`, in whatever case, where one of `dimension` is expected.
    ///
    /// # Errors
    /// A unit that is not known, or measures something else.
    pub fn named(symbol: &str, dimension: Dimension) -> Result<&'static Self, QuantityFault> {
        let lower = symbol.to_lowercase();
        match UNITS.iter().find(|unit| unit.symbol == lower) {
            Some(unit) if unit.dimension == dimension => Ok(unit),
            Some(unit) => Err(QuantityFault::other_dimension(unit, dimension)),
            None => Err(QuantityFault::unknown_unit(symbol, dimension)),
        }
    }

    /// The symbols of a dimension, in the order in which they are offered.
    pub fn symbols(dimension: Dimension) -> impl Iterator<Item = &'static str> {
        UNITS.iter().filter(move |unit| unit.dimension == dimension).map(|unit| unit.symbol)
    }

    /// How `written`, as people write it elsewhere, is typed here.
    pub fn typed_here(written: &str) -> Option<&'static str> {
        let lower = written.to_lowercase();
        UNITS.iter().find(|unit| unit.elsewhere.contains(&lower.as_str())).map(|unit| unit.symbol)
    }

    /// `value` of this unit in the dimension's base unit.
    pub fn to_base(&self, value: f64) -> f64 {
        value * self.base
    }

    /// `value` of the dimension's base unit in this unit.
    pub fn of_base(&self, value: f64) -> f64 {
        value / self.base
    }
}

impl Dimension {
    /// The word for it in a sentence.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Length => "length",
            Self::Angle => "angle",
            Self::Mass => "mass",
            Self::Speed => "speed",
        }
    }

    /// "mm, cm or in": the units to choose from.
    pub fn choices(self) -> String {
        list::either(Unit::symbols(self))
    }
}
