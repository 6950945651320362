//! What can be wrong with a table.

use quarterturn_journal::Damage;
use thiserror::Error;

use crate::list::either;
use crate::{Advising, all, closest};

/// Why a table cannot be read.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
pub enum TableFault {
    /// Nothing at all.
    #[error("there is no table here")]
    Empty,
    /// Names of columns and nothing below them.
    #[error("there is no line below the names of the columns")]
    NoRows,
    /// Something the reader of tables gives up at.
    #[error("this is not a table")]
    Unreadable,
    /// A line that no table has.
    #[error("this line is longer than any table's")]
    LongLine,
    /// A cell whose quotes never end.
    #[error("this quote is not closed")]
    OpenQuote,
    /// A name that no column has.
    #[error("no column is called \"{name}\"")]
    UnknownColumn {
        /// As it is written, in small letters.
        name: String,
        /// What was perhaps meant.
        meant: Option<String>,
    },
    /// A number without a unit that is known.
    #[error("in which unit is \"{name}\"?")]
    NoUnit {
        /// As it is written, in small letters.
        name: String,
        /// The names it could have.
        choices: Vec<String>,
    },
    /// Two columns that say the same.
    #[error("another column says this already")]
    ColumnTwice,
    /// No column says whose shot it is.
    #[error("no column is called \"shaft\"")]
    NoShaftColumn,
    /// A row that is not as long as the first.
    #[error("this line has {found} cells, and there are {expected} columns")]
    Cells {
        /// How many it has.
        found: usize,
        /// How many it should have.
        expected: usize,
    },
    /// Something else where a number belongs.
    #[error("a number was expected here")]
    NotANumber,
    /// A number with a unit.
    #[error("the unit is in the name of the column")]
    UnitInCell,
    /// A comma that may be anything.
    #[error("a decimal comma, or thousands?")]
    DoubtfulComma,
    /// More digits than anybody measured.
    #[error("more digits than can have been measured")]
    TooManyDigits,
    /// A number beyond what a double holds.
    #[error("this number is too large")]
    TooLarge,
    /// A count, an id or a time in another form.
    #[error("this is not {what}")]
    NotA {
        /// What it should be.
        what: &'static str,
    },
    /// A kind of entry that is not known.
    #[error("\"{kind}\" is not a kind of entry")]
    UnknownKind {
        /// As it is written.
        kind: String,
    },
    /// No shaft in a row of an end.
    #[error("whose shot is this?")]
    NoShaft,
    /// No shaft in a row of measures.
    #[error("whose measures are these?")]
    NobodysMeasures,
    /// An entry of another kind than an end without its data.
    #[error("an entry of this kind needs its data")]
    NoData,
    /// Data that are not those of their kind.
    #[error("this cannot be read: {reason}")]
    Data {
        /// What the reader of JSON says.
        reason: String,
    },
    /// JSON that is no export.
    #[error("this is no export: {reason}")]
    NoExport {
        /// What the reader of JSON says.
        reason: String,
    },
}

/// The kinds of entries.
pub(super) const KINDS: [&str; 13] = [
    "new", "end", "bow", "shaft", "add", "fix", "bench", "glue", "group", "quiver", "note", "undo",
    "redo",
];

impl TableFault {
    /// What an entry's data are not.
    pub(crate) fn data(damage: &Damage) -> Self {
        let reason = match damage {
            // The reader of JSON names a type of ours.
            Damage::Content { reason } if reason.contains("untagged") => {
                "it is neither a change nor a reason to leave it".to_owned()
            }
            Damage::Content { reason } => reason.clone(),
            other => other.to_string(),
        };
        Self::Data { reason }
    }

    pub(super) fn no_unit(name: &str, stem: &str, units: Vec<&'static str>) -> Self {
        let choices = units.into_iter().map(|unit| format!("{stem}_{unit}")).collect();
        Self::NoUnit { name: name.to_owned(), choices }
    }
}

impl Advising for TableFault {
    fn way_on(&self) -> Option<String> {
        let fixed = match self {
            Self::UnknownColumn { meant: Some(meant), .. } => {
                return Some(format!("did you mean \"{meant}\"?"));
            }
            Self::NoUnit { choices, .. } => return Some(format!("call it {}", either(choices))),
            Self::UnknownKind { kind } => {
                let meant = closest(kind, KINDS).map(|meant| format!("did you mean \"{meant}\"?"));
                return Some(meant.unwrap_or_else(|| format!("the kinds are {}", all(KINDS))));
            }
            Self::UnknownColumn { meant: None, .. } => {
                "take the column out, or give it one of the names in docs/import-export.md"
            }
            Self::Empty | Self::NoRows | Self::NoShaftColumn => {
                "for example: shaft,x_mm,y_mm and below it 7,31,8"
            }
            Self::Unreadable | Self::LongLine => "export it as a table in UTF-8, a shot a line",
            Self::OpenQuote => "end the cell with a quote, and double the quotes inside it",
            Self::ColumnTwice => "take one of the two out",
            Self::Cells { .. } => "put a cell with a comma, a semicolon or a line end in quotes",
            Self::NotANumber => {
                "for example 12 or 12.5; leave the cell blank where it is not known"
            }
            Self::UnitInCell => "write the number alone",
            Self::DoubtfulComma => {
                "write decimals with a point, or part the columns with semicolons; thousands have no mark"
            }
            Self::TooManyDigits => "a tenth of a millimetre is as fine as a tape is read",
            Self::TooLarge => "check the number and its unit",
            Self::NotA { .. } => "leave the column out where the table was written by hand",
            Self::NoShaft | Self::NobodysMeasures => "write the name of the shaft or the reference",
            Self::NoData => "take it from the export, or leave the line out",
            Self::Data { .. } | Self::NoExport { .. } => {
                "write it with `export`, and leave it as it is"
            }
        };
        Some(fixed.to_owned())
    }
}
