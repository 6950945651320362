//! The ways in which a line of a journal can be damaged, in a person's words.

use thiserror::Error;

use crate::Fault;
use crate::chain::{FORMAT, LONGEST_LINE};

/// What is wrong with one line of a journal.
#[derive(Clone, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum Damage {
    /// It does not look like a record.
    #[error("this is not a record with its checksum at the end")]
    NoRecord,
    /// It was changed after it was written.
    #[error("its checksum does not fit: it was changed after it was written")]
    Checksum,
    /// It was written by a newer program.
    #[error("it has format {found}, and this program reads format {FORMAT}")]
    Format {
        /// The format it states.
        found: u64,
    },
    /// A line is missing, stands twice or was moved.
    #[error("record {found} stands where record {expected} belongs: {}", moved(*found, *expected))]
    Number {
        /// The number it states.
        found: u64,
        /// The number that belongs here.
        expected: u64,
    },
    /// It was written after another line than the one before it.
    #[error("it was not written after the line before: one of the two was exchanged")]
    Exchanged,
    /// It is of a kind that is not known.
    #[error("it is of a kind that this program does not know: \"{found}\"")]
    Kind {
        /// The kind it states.
        found: String,
    },
    /// It is whole, but its members are not those of a record.
    #[error("it cannot be read: {reason}")]
    Content {
        /// What the reader of JSON says.
        reason: String,
    },
    /// It is whole, but what it says cannot be.
    #[error("it says what cannot be: {}", .0.what)]
    Meaning(Fault),
    /// The first record does not say how the journal was begun.
    #[error("the first record must say how the journal was begun")]
    NoBeginning,
    /// It is longer than any record.
    #[error("it is longer than {LONGEST_LINE} bytes")]
    TooLong,
}

impl Damage {
    /// Whether a line can be so because it was never written to its end.
    pub(crate) const fn of_writing(&self) -> bool {
        matches!(self, Self::NoRecord | Self::Checksum)
    }

    /// The first of the faults in what a record says.
    pub(crate) fn meaning(faults: Vec<Fault>) -> Self {
        faults.into_iter().next().map_or(Self::NoRecord, Self::Meaning)
    }
}

fn moved(found: u64, expected: u64) -> &'static str {
    if found > expected { "a line is missing" } else { "a line stands twice or was moved" }
}
