//! What one record of a journal says.

use serde::Serialize;

use crate::sealed::parsed;
use crate::{
    AddEntry, BenchEntry, BowEntry, Damage, EndEntry, FixEntry, GlueEntry, GroupEntry, NewEntry,
    NoteEntry, QuiverEntry, RedoEntry, ShaftEntry, UndoEntry, UnreadableEntry,
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
    /// A shaft was measured in the workshop.
    Bench(BenchEntry),
    /// Something was glued.
    Glue(GlueEntry),
    /// Finished arrows were shot.
    Group(GroupEntry),
    /// Something about the quiver: its order, a head, a limit.
    Quiver(QuiverEntry),
    /// Something worth remembering.
    Note(NoteEntry),
    /// An earlier entry was taken back.
    Undo(UndoEntry),
    /// A record was lost and the journal mended around it.
    Unreadable(UnreadableEntry),
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
            Self::Bench(_) => "bench",
            Self::Glue(_) => "glue",
            Self::Group(_) => "group",
            Self::Quiver(_) => "quiver",
            Self::Note(_) => "note",
            Self::Undo(_) => "undo",
            Self::Unreadable(_) => "unreadable",
            Self::Redo(_) => "redo",
        }
    }

    /// Reads the `data` of a record of this `kind`.
    ///
    /// # Errors
    /// [`Damage::Kind`] for a kind that is not known, [`Damage::Content`] for data that are not those of the kind.
    pub fn read(kind: &str, data: &str) -> Result<Self, Damage> {
        Ok(match kind {
            "new" => Self::New(parsed(data)?),
            "end" => Self::End(parsed(data)?),
            "bow" => Self::Bow(parsed(data)?),
            "shaft" => Self::Shaft(parsed(data)?),
            "add" => Self::Add(parsed(data)?),
            "fix" => Self::Fix(parsed(data)?),
            "bench" => Self::Bench(parsed(data)?),
            "glue" => Self::Glue(parsed(data)?),
            "group" => Self::Group(parsed(data)?),
            "quiver" => Self::Quiver(parsed(data)?),
            "note" => Self::Note(parsed(data)?),
            "undo" => Self::Undo(parsed(data)?),
            "redo" => Self::Redo(parsed(data)?),
            "unreadable" => Self::Unreadable(parsed(data)?),
            _ => return Err(Damage::Kind { found: kind.to_owned() }),
        })
    }
}
