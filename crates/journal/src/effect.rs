//! What an entry does to what the journal says.

use quarterturn_tuning::Event;

/// The effect of one entry.
pub(crate) enum Effect {
    /// It adds an event.
    Adds(Event),
    /// It says nothing that counts.
    Nothing,
    /// It takes the last event back.
    TakesBack,
}
