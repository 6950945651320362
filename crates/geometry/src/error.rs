//! The few ways in which a geometric value can be impossible.

use thiserror::Error;

/// Why a geometric value was refused.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum GeometryError {
    /// A count of places for the mark that no nock can be set to.
    #[error("{count} positions: a nock can be set to 1 to 72 evenly spaced positions")]
    Positions {
        /// What was asked for.
        count: u16,
    },
}
