//! What one record of a journal says.

use serde::Serialize;

use crate::{BowEntry, EndEntry, NewEntry, ShaftEntry, UndoEntry, UnreadableEntry};

/// One entry, as it is written: its JSON is the `data` of its record.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(untagged)]
pub enum Entry {
    /// The journal was begun.
    New(NewEntry),
    /// An end was shot.
    End(EndEntry),
    /// The bow was changed, or left.
    Bow(BowEntry),
    /// A shaft or a reference changed its state.
    Shaft(ShaftEntry),
    /// An earlier entry was taken back.
    Undo(UndoEntry),
    /// A record was lost and the journal mended around it.
    Unreadable(UnreadableEntry),
}

impl Entry {
    /// The word for it in the record.
    pub const fn kind(&self) -> &'static str {
        match self {
            Self::New(_) => "new",
            Self::End(_) => "end",
            Self::Bow(_) => "bow",
            Self::Shaft(_) => "shaft",
            Self::Undo(_) => "undo",
            Self::Unreadable(_) => "unreadable",
        }
    }
}
