//! What every record carries beside its data.

use crate::{RecordId, Timestamp};

/// The id and the time of a record, from whoever has a source of chance and a clock.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stamp {
    /// What tells the record from every other.
    pub id: RecordId,
    /// When it was written.
    pub time: Timestamp,
}
