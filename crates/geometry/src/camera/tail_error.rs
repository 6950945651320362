//! Why a pixel can show no tail.

use thiserror::Error;

use crate::Millimetres;

/// Why the pixel of a tail tells of no lean.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum TailError {
    /// The tail would be farther from its hole than the arrow sticks out.
    #[error(
        "an arrow that sticks out {:.0} mm cannot have its tail here: it takes {:.0} mm at least",
        length.mm(), least.mm().ceil()
    )]
    TooShort {
        /// How far the arrow sticks out.
        length: Millimetres,
        /// How far it must at least.
        least: Millimetres,
    },
    /// The tail would be in the butt, behind the camera, or so far over that no arrow sticks so.
    #[error("no arrow that sticks out {:.0} mm of this hole has its tail here", length.mm())]
    Nowhere {
        /// How far the arrow sticks out.
        length: Millimetres,
    },
    /// The shaft is seen from the side, where its tail moves along the look.
    #[error("this shaft is seen too much from the side: more than one lean fits")]
    FromTheSide,
}
