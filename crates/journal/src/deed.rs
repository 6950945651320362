//! What an entry did, so that it can be taken back and brought back.

use quarterturn_tuning::{Event, Group, ShaftName};

use crate::add_entry::Joining;
use crate::{BenchEntry, GlueEntry, QuiverEntry};

/// What an undo took back, or a redo brought back.
#[derive(Clone, Debug, PartialEq)]
pub enum Deed {
    /// An event: an end, or a change of the bow or of a shaft.
    Added(Event),
    /// A correction of this end, counted from 1 over all ends that stand.
    Corrected {
        /// The end.
        end: usize,
    },
    /// A shaft or a reference that joined.
    Joined(ShaftName),
    /// Measures of a shaft or a reference.
    Measured(String),
    /// Something that was glued on these.
    Glued(Vec<String>),
    /// A group of finished arrows.
    Grouped {
        /// How many shots it has.
        shots: usize,
    },
    /// Something about the quiver.
    Quivered,
    /// A note.
    Noted,
}

/// An entry that stands or was taken back, with what it takes to go from the one to the other.
#[derive(Clone, Debug)]
pub(crate) struct Step {
    /// The number of its record.
    pub seq: u64,
    /// What it did.
    pub kind: StepKind,
}

/// What an entry does to a history, kept so that it can go either way: boxed, because nearly all of the many that a journal has
/// are ends, of which nothing is kept here.
#[derive(Clone, Debug)]
pub(crate) enum StepKind {
    /// It adds an event; kept here only while it is taken back.
    Adds(Option<Box<Event>>),
    /// It exchanges the event in this place for another, which is kept here.
    Exchanges {
        /// The place in the history.
        at: usize,
        /// What stands there when this is taken back, or again when it is brought back.
        other: Box<Event>,
    },
    /// Somebody joins.
    Joins(Box<Joining>),
    /// A shaft was measured.
    Measures(Box<BenchEntry>),
    /// Something was glued.
    Glues(Box<GlueEntry>),
    /// It adds a group of finished arrows; kept here only while it is taken back.
    Groups(Option<Box<Group>>),
    /// Something about the quiver.
    Quivers(Box<QuiverEntry>),
    /// Nothing but a note.
    Notes,
}
