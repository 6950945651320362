//! What an entry does to what the journal says.

use quarterturn_tuning::{Event, Group};

use crate::add_entry::Joining;
use crate::{BenchEntry, GlueEntry, QuiverEntry};

/// The effect of one entry.
pub(crate) enum Effect {
    /// It adds an event.
    Adds(Event),
    /// It exchanges the event in this place of the history.
    Exchanges {
        /// The place.
        at: usize,
        /// What stands there from now on.
        event: Event,
    },
    /// A shaft or a reference joins.
    Joins(Joining),
    /// A shaft was measured in the workshop.
    Measures(Box<BenchEntry>),
    /// Something was glued.
    Glues(GlueEntry),
    /// It adds a group of finished arrows.
    Groups(Group),
    /// It says something of the quiver.
    Quivers(QuiverEntry),
    /// It says something and changes nothing.
    Notes,
    /// It stands for something that nobody can read any more.
    Nothing,
    /// It takes the last entry back.
    TakesBack,
    /// It brings the entry back that was taken back last.
    BringsBack,
}
