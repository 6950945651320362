//! The place of a record that could not be read when the journal was mended.

use serde::{Deserialize, Serialize};

/// What stands where a record was lost: it keeps the number of the record, so that all others keep theirs.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct UnreadableEntry {
    /// What was wrong with the record.
    pub why: String,
    /// The file beside the journal that keeps what stood there, as it was.
    pub kept: String,
}
