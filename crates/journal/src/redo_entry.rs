//! An entry brought back, as it is written in the journal.

use serde::{Deserialize, Serialize};

/// Which record stands again: the one that was taken back last, as long as nothing else was entered since.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct RedoEntry {
    /// Its number.
    pub seq: u64,
}
