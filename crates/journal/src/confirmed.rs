//! What was written, and is on the disk.

use std::path::PathBuf;

use crate::{Deed, Record, Timestamp};

/// A record that survives a power cut, and what happened beside it.
#[derive(Clone, Debug, PartialEq)]
pub struct Confirmed {
    /// The record, with everything written out.
    pub record: Record,
    /// What was taken back by an undo, or brought back by a redo.
    pub recalled: Option<Deed>,
    /// When the record before it was written, where that was later: a clock was set back. Order is by number.
    pub later: Option<Timestamp>,
    /// The file into which a torn end was moved first, if there was one.
    pub torn_kept: Option<PathBuf>,
}
