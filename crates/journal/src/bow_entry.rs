//! A change of the bow, or the decision to leave it, as it is written in the journal.

use quarterturn_geometry::Offset;
use quarterturn_tuning::{BowChange, BowPart, Event};
use serde::{Deserialize, Serialize};

use crate::limit::Limit;
use crate::{Fault, Place, What, Word};

/// What was done to the bow; checked when it is appended.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(untagged)]
pub enum BowEntry {
    /// It stays as it is.
    Leave {
        /// Why.
        leave: String,
    },
    /// It was changed.
    Change {
        /// What was done.
        note: String,
        /// The word of the [`BowPart`]; left out: another part.
        #[serde(skip_serializing_if = "Option::is_none")]
        part: Option<String>,
        /// How far the part was moved to the right and up, mm.
        #[serde(skip_serializing_if = "Option::is_none")]
        move_mm: Option<[f64; 2]>,
    },
}

impl BowEntry {
    /// The event that is meant.
    pub(crate) fn event(&self) -> Result<Event, Fault> {
        match self {
            Self::Leave { leave } => said("leave", leave).map(|()| Event::BowLeft),
            Self::Change { note, part, move_mm } => {
                said("note", note)?;
                let part = part.as_deref().map(BowPart::from_word).transpose();
                let part = part.map_err(|what| Fault::at("part", what))?.unwrap_or_default();
                let moved = move_mm.map(offset).transpose()?;
                Ok(Event::Bow(BowChange { part, moved }))
            }
        }
    }
}

fn said(member: &'static str, text: &str) -> Result<(), Fault> {
    if text.trim().is_empty() { Err(Fault::whole(What::Missing { member })) } else { Ok(()) }
}

fn offset([x_mm, y_mm]: [f64; 2]) -> Result<Offset, Fault> {
    let checked = |item, value| {
        let place = Place::of("move_mm").item(item);
        Limit::BOW_MOVE.either_way(value).map_err(|what| Fault { place, what })
    };
    Ok(Offset::new(checked(0, x_mm)?, checked(1, y_mm)?))
}
