//! What is found wrong with a journal, line by line.

use std::fmt;

use crate::Damage;

/// One thing that is wrong with a journal.
#[derive(Clone, Debug, PartialEq)]
#[non_exhaustive]
pub enum Finding {
    /// A line cannot be used.
    Damaged {
        /// The line, the first being 1.
        line: u64,
        /// What is wrong with it.
        damage: Damage,
    },
    /// Records have no line.
    Missing {
        /// The number of the first.
        from: u64,
        /// The number of the last.
        to: u64,
    },
    /// A record stands in another line already, or belongs to another journal.
    LeftOver {
        /// The line, the first being 1.
        line: u64,
        /// The number it states.
        record: u64,
    },
    /// A record stands before one that comes before it.
    Moved {
        /// The line, the first being 1.
        line: u64,
        /// Its number.
        record: u64,
    },
    /// A record was written after another one than the one before it; both are kept.
    Unlinked {
        /// The line, the first being 1.
        line: u64,
        /// Its number.
        record: u64,
    },
}

impl fmt::Display for Finding {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Damaged { line, damage } => write!(f, "line {line}: {damage}"),
            Self::Missing { from, to } if from == to => write!(f, "record {from} has no line"),
            Self::Missing { from, to } => write!(f, "records {from} to {to} have no line"),
            Self::LeftOver { line, record } => {
                write!(
                    f,
                    "line {line}: record {record} stands elsewhere already, or is not of this journal"
                )
            }
            Self::Moved { line, record } => {
                write!(f, "line {line}: record {record} stands before the one that it follows")
            }
            Self::Unlinked { line, record } => write!(
                f,
                "line {line}: record {record} was not written after the one before it: \
                 one of the two was exchanged"
            ),
        }
    }
}
