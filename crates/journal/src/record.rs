//! One line of a journal.

use crate::{Entry, Stamp};

/// One entry with its number, its id and its time.
#[derive(Clone, Debug, PartialEq)]
pub struct Record {
    /// Its number: 1 for the first, then without a gap.
    pub seq: u64,
    /// Its id and its time.
    pub stamp: Stamp,
    /// What it says.
    pub entry: Entry,
}
