//! What can be wrong with pixels that were typed.

use thiserror::Error;

use crate::Advising;
use crate::quantity::QuantityFault;
use crate::shorthand::ShorthandFault;

/// Why pixels cannot be read.
#[derive(Clone, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum PixelFault {
    /// No two numbers.
    #[error("a pixel is two numbers with a comma between them")]
    NoPair,
    /// Not a number.
    #[error("this is no number of pixels")]
    NoNumber,
    /// Other than four pixels.
    #[error("four pixels are expected here, and {count} can be read")]
    NotFour {
        /// How many there are.
        count: usize,
    },
    /// A mark without its pixel or its place.
    #[error("a mark is its place on the face, = and its pixel")]
    NoMark,
    /// A hole without a name or without a pixel.
    #[error("a hole is the name of its arrow, = and its pixel")]
    NoHole,
    /// A hit beside the pixel.
    #[error("the photo says where it hit")]
    HitSaid,
    /// A tail by degrees, tape or eye beside tails in the picture.
    #[error("the other tails are read in the picture, and this one is not")]
    TailsReadTwoWays,
    /// No hole at all.
    #[error("no hole is given")]
    Nothing,
    /// A place of a mark that cannot be read.
    #[error(transparent)]
    Place(#[from] QuantityFault),
    /// A word behind the pixel that cannot be read.
    #[error(transparent)]
    Word(#[from] ShorthandFault),
}

impl Advising for PixelFault {
    fn way_on(&self) -> Option<String> {
        let way_on = match self {
            Self::NoPair | Self::NoNumber => {
                "to the right and down, as picture viewers count: 1204,833"
            }
            Self::NotFour { .. } => {
                "top left, top right, bottom right, bottom left, as you face the target: \
                 \"412,388 2650,301 2781,2412 355,2290\""
            }
            Self::NoMark => {
                "for example -83,83=412,388: 83 left and 83 up of the spot, then the pixel"
            }
            Self::NoHole | Self::Nothing => "for example 7=1204,833, or \"7=1204,833 i3 tl2 p\"",
            Self::HitSaid => {
                "take it out; behind the pixel stand the mark, the tail, the call and flags"
            }
            Self::TailsReadTwoWays => {
                "leans are compared, so read all tails of an end one way: this one in the picture as well, as t1130,702, or \
                 none there"
            }
            Self::Place(fault) => return fault.way_on(),
            Self::Word(fault) => return fault.way_on(),
        };
        Some(way_on.to_owned())
    }
}
