//! What can be wrong with a number and its unit.

use thiserror::Error;

use super::{Dimension, Unit};
use crate::Advising;

/// Why a text is not a quantity.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum QuantityFault {
    /// Something else stands there, or nothing.
    #[error("a number was expected here")]
    NotANumber,
    /// As in 1.2.3.
    #[error("a second decimal point")]
    SecondPoint,
    /// As in 18,3m.
    #[error("a decimal comma")]
    DecimalComma {
        /// The same with a point.
        with_point: String,
    },
    /// More digits than anybody measured.
    #[error("more digits than can have been measured")]
    TooManyDigits,
    /// A bare number where units differ.
    #[error("{} {} needs a unit", article(*.dimension), .dimension.word())]
    NoUnit {
        /// The number as typed.
        number: String,
        /// What is measured.
        dimension: Dimension,
    },
    /// A unit that is not known.
    #[error("\"{symbol}\" is not a unit of {} here", .dimension.word())]
    UnknownUnit {
        /// As typed.
        symbol: String,
        /// What is measured.
        dimension: Dimension,
    },
    /// A unit of something else.
    #[error("\"{symbol}\" is a unit of {}, not of {}", .found.word(), .expected.word())]
    OtherDimension {
        /// As typed here.
        symbol: &'static str,
        /// What it measures.
        found: Dimension,
        /// What is to be measured.
        expected: Dimension,
    },
}

impl QuantityFault {
    pub(super) fn no_unit(number: &str, dimension: Dimension) -> Self {
        Self::NoUnit { number: number.to_owned(), dimension }
    }

    pub(super) fn decimal_comma(text: &str) -> Self {
        Self::DecimalComma { with_point: text.replacen(',', ".", 1) }
    }

    pub(super) fn unknown_unit(symbol: &str, dimension: Dimension) -> Self {
        Self::UnknownUnit { symbol: symbol.to_owned(), dimension }
    }

    pub(super) fn other_dimension(unit: &'static Unit, expected: Dimension) -> Self {
        Self::OtherDimension { symbol: unit.symbol, found: unit.dimension, expected }
    }
}

impl Advising for QuantityFault {
    fn way_on(&self) -> Option<String> {
        Some(match self {
            Self::NotANumber => "for example 12 or 12.5".to_owned(),
            Self::SecondPoint => "write one number with one point".to_owned(),
            Self::DecimalComma { with_point } => {
                format!("write decimals with a point: {with_point}")
            }
            Self::TooManyDigits => {
                "a tenth of a millimetre is as fine as a tape is read".to_owned()
            }
            Self::NoUnit { number, dimension } => {
                let examples = Unit::symbols(*dimension).map(|symbol| format!("{number}{symbol}"));
                format!("write {}", crate::list::either(examples))
            }
            Self::UnknownUnit { symbol, dimension } => match Unit::typed_here(symbol) {
                Some(symbol) => format!("write it \"{symbol}\""),
                None => crate::closest(symbol, Unit::symbols(*dimension)).map_or_else(
                    || format!("use {}", dimension.choices()),
                    |symbol| format!("did you mean \"{symbol}\"?"),
                ),
            },
            Self::OtherDimension { expected, .. } => format!("use {}", expected.choices()),
        })
    }
}

/// The article before a dimension's word.
const fn article(dimension: Dimension) -> &'static str {
    match dimension {
        Dimension::Angle => "an",
        _ => "a",
    }
}
