//! The shots between two walks to the butt.

use quarterturn_geometry::Millimetres;

use crate::Shot;

/// An end: what was shot before walking up.
#[derive(Clone, Debug, PartialEq)]
pub struct End {
    /// The shots in the order they were entered; a shaft at most once.
    pub shots: Vec<Shot>,
    /// The evening it belongs to: ends of one evening share the archer's aim and his sight.
    pub evening: String,
    /// The distance, where it was not the journal's: such an end is kept and shown, never pooled.
    pub distance: Option<Millimetres>,
}
