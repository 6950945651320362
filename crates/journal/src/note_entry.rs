//! Something worth remembering, as it is written in the journal.

use serde::{Deserialize, Serialize};

/// A note that belongs to no end; checked when it is appended.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct NoteEntry {
    /// The note, in the archer's words.
    pub note: String,
}
