//! What became of a shaft, as it is written in the journal.

use quarterturn_geometry::Index;
use quarterturn_tuning::{Event, Roster, Setup, ShaftChange, ShaftName, ShaftState};
use serde::{Deserialize, Serialize};

use crate::limit::Limit;
use crate::names::known;
use crate::quiver_entry::day;
use crate::{Fault, What, Word};

/// A change of a shaft or a reference; checked when it is appended.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ShaftEntry {
    /// Its name.
    pub shaft: String,
    /// The word of the [`ShaftChange`].
    pub change: String,
    /// Where the mark stands from now on, degrees clockwise from 12 o'clock, of a shaft that was fletched; left out: where it
    /// was last shot.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub index_deg: Option<f64>,
    /// The day on which it happened, as in 2027-03-02; left out: that of the record.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub on: Option<String>,
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
        self.on.as_deref().map_or(Ok(()), day).map_err(|what| Fault::at("on", what))?;
        let index_deg = self.index_deg.map(|deg| Limit::INDEX.either_way(deg)).transpose();
        match index_deg.map_err(|what| Fault::at("index_deg", what))? {
            Some(deg) if change == ShaftChange::Fletched => {
                Ok(Event::Fletched(name, Index::from_degrees(deg)))
            }
            _ => Ok(Event::Shaft(name, change)),
        }
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
        ShaftChange::Checked | ShaftChange::HardHit | ShaftChange::NewNock => {
            !matches!(state, ShaftState::Lost | ShaftState::Broken)
        }
        ShaftChange::Repaired => true,
    }
}
