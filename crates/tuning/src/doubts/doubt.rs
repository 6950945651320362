//! One shot on which a verdict hangs.

use quarterturn_geometry::{Index, Offset};

use crate::{ShaftName, Verdict};

/// A shot that is doubtful, and what would be said of its shaft without it.
#[derive(Clone, Debug, PartialEq)]
pub struct Doubt {
    /// Which shaft.
    pub shaft: ShaftName,
    /// The end of the shot, counted from 1 over all ends of the journal.
    pub end: usize,
    /// Where it hit, from the references of that end; from the spot where there were none.
    pub miss: Offset,
    /// What would be said without it.
    pub without: Without,
}

/// What changes without a shot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Without {
    /// The verdict.
    Verdict(Verdict),
    /// Only the index that is judged.
    Index(Index),
}
