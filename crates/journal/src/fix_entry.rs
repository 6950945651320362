//! An earlier end put right, as it is written in the journal.

use quarterturn_tuning::{End, Setup};
use serde::{Deserialize, Serialize};

use crate::{EndEntry, Fault};

/// How an end that was entered before really was; the record that entered it stays.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct FixEntry {
    /// The number of the record that entered the end.
    pub seq: u64,
    /// The whole end as it should have been entered, with everything written out.
    pub end: EndEntry,
}

impl FixEntry {
    /// The end that is meant; faults are placed in the end.
    pub(crate) fn end(&self, setup: &Setup) -> Result<End, Vec<Fault>> {
        self.end.end(setup)
    }
}
