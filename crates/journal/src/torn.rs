//! A cut end of a journal.

use std::fmt;

/// What stands after the last whole record: an entry that was never confirmed, or one that is being written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Torn {
    /// How many bytes it has.
    pub bytes: u64,
}

impl fmt::Display for Torn {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { bytes } = self;
        write!(f, "the last {bytes} bytes are not a whole record and are left out")
    }
}
