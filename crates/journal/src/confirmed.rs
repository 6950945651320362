//! What was written, and is on the disk.

use std::path::PathBuf;

use quarterturn_tuning::Event;

use crate::{Record, Timestamp};

/// A record that survives a power cut, and what happened beside it.
#[derive(Clone, Debug, PartialEq)]
pub struct Confirmed {
    /// The record, with everything written out.
    pub record: Record,
    /// The event that was taken back, if it was an undo.
    pub taken_back: Option<Event>,
    /// When the record before it was written, where that was later: a clock was set back. Order is by number.
    pub later: Option<Timestamp>,
    /// The file into which a torn end was moved first, if there was one.
    pub torn_kept: Option<PathBuf>,
}
