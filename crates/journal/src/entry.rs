//! What one record of a journal says.

use serde::Serialize;

use crate::{
    AddEntry, BowEntry, EndEntry, FixEntry, NewEntry, NoteEntry, RedoEntry, ShaftEntry, UndoEntry,
};

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
    /// A shaft or a reference joined.
    Add(AddEntry),
    /// An earlier end was put right.
    Fix(FixEntry),
    /// Something worth remembering.
    Note(NoteEntry),
    /// An earlier entry was taken back.
    Undo(UndoEntry),
    /// What was taken back stands again.
    Redo(RedoEntry),
}

impl Entry {
    /// The word for it in the record.
    pub const fn kind(&self) -> &'static str {
        match self {
            Self::New(_) => "new",
            Self::End(_) => "end",
            Self::Bow(_) => "bow",
            Self::Shaft(_) => "shaft",
            Self::Add(_) => "add",
            Self::Fix(_) => "fix",
            Self::Note(_) => "note",
            Self::Undo(_) => "undo",
            Self::Redo(_) => "redo",
        }
    }
}
