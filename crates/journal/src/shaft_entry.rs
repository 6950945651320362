//! What became of a shaft, as it is written in the journal.

use quarterturn_tuning::{Event, Roster, Setup, ShaftChange, ShaftName, ShaftState};
use serde::{Deserialize, Serialize};

use crate::names::known;
use crate::{Fault, What, Word};

/// A change of a shaft or a reference; checked when it is appended.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ShaftEntry {
    /// Its name.
    pub shaft: String,
    /// The word of the [`ShaftChange`].
    pub change: String,
    /// Anything worth remembering.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
}

impl ShaftEntry {
    /// The event that is meant, in a journal begun by `setup`.
    pub(crate) fn event(&self, setup: &Setup) -> Result<Event, Fault> {
        let name = known(setup, &self.shaft).map_err(|what| Fault::at("shaft", what))?;
        let change =
            ShaftChange::from_word(&self.change).map_err(|what| Fault::at("change", what))?;
        Ok(Event::Shaft(name, change))
    }
}

/// That `change` can follow on what is recorded of the shaft `name`.
pub(crate) fn follows(name: &ShaftName, change: ShaftChange, roster: &Roster) -> Result<(), What> {
    let name = name.clone();
    let reference = roster.references.iter().any(|reference| reference.name == name);
    match roster.find(&name).map(|standing| standing.state) {
        _ if reference && change == ShaftChange::Fletched => Err(What::FletchedReference { name }),
        Some(state) if !can_follow(change, state) => Err(What::CannotFollow { name, state }),
        _ => Ok(()),
    }
}

/// Whether `change` says something new and sensible of a shaft in `state`.
fn can_follow(change: ShaftChange, state: ShaftState) -> bool {
    match change {
        ShaftChange::Lost => state != ShaftState::Lost,
        ShaftChange::Broken => state != ShaftState::Broken,
        ShaftChange::SetAside | ShaftChange::Fletched => state == ShaftState::InUse,
        // A broken shaft must be mended; what was lost may be found, what was fletched may be stripped.
        ShaftChange::Readmit => !matches!(state, ShaftState::InUse | ShaftState::Broken),
        ShaftChange::Repaired => true,
    }
}
