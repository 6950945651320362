//! An entry taken back, as it is written in the journal.

use serde::{Deserialize, Serialize};

/// Which record is taken back; the record itself stays.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct UndoEntry {
    /// Its number.
    pub seq: u64,
}
