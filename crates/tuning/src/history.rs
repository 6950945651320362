//! All that is known: how the journal was begun and what happened since.

use crate::{Event, Setup};

/// The journal as the model reads it.
#[derive(Clone, Debug, PartialEq)]
pub struct History {
    /// How it was begun.
    pub setup: Setup,
    /// What happened since, in order, without what was taken back.
    pub events: Vec<Event>,
}

impl History {
    /// The same when only its first events had happened.
    #[must_use]
    pub fn after(&self, events: usize) -> Self {
        let first = self.events.iter().take(events);
        Self { setup: self.setup.clone(), events: first.cloned().collect() }
    }
}
