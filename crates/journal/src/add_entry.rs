//! A shaft or a reference that joins later, as it is written in the journal.

use quarterturn_geometry::Index;
use quarterturn_tuning::{Setup, ShaftName};
use serde::{Deserialize, Serialize};

use crate::limit::Limit;
use crate::new_entry::MOST_SHAFTS;
use crate::shot_entry::without_turns;
use crate::{Fault, Role, What, Word};

/// A shaft that is shot from now on; checked when it is appended.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct AddEntry {
    /// Its name.
    pub shaft: String,
    /// The word of its [`Role`]; left out: bare.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub role: Option<String>,
    /// Where its mark stands, degrees clockwise from 12 o'clock; left out: at 12 o'clock.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub index_deg: Option<f64>,
}

/// Who joins.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Joining {
    /// A bare shaft, with its mark here.
    Bare(ShaftName, Index),
    /// A fletched reference.
    Reference(ShaftName),
}

impl AddEntry {
    /// Writes out where the mark stands, whole turns taken off.
    pub(crate) fn make_explicit(&mut self) {
        self.index_deg = Some(without_turns(self.index_deg.unwrap_or_default()));
    }

    /// Who joins a journal that has `setup` so far.
    pub(crate) fn joining(&self, setup: &Setup) -> Result<Joining, Fault> {
        let bad = |_| Fault::at("shaft", What::BadName { name: self.shaft.clone() });
        let name: ShaftName = self.shaft.parse().map_err(bad)?;
        if crate::names::all(setup).any(|known| *known == name) {
            return Err(Fault::at("shaft", What::Known { name }));
        }
        let role = self.role.as_deref().map(Role::from_word).transpose();
        let index_deg = Limit::INDEX.either_way(self.index_deg.unwrap_or_default());
        let index_deg = index_deg.map_err(|what| Fault::at("index_deg", what))?;
        match role.map_err(|what| Fault::at("role", what))?.unwrap_or_default() {
            Role::Reference => Ok(Joining::Reference(name)),
            Role::Bare if setup.shafts.len() >= MOST_SHAFTS => {
                let count = setup.shafts.len() + 1;
                Err(Fault::at("shaft", What::TooManyShafts { count, most: MOST_SHAFTS }))
            }
            Role::Bare => Ok(Joining::Bare(name, Index::from_degrees(index_deg))),
        }
    }
}

impl Joining {
    /// Takes it into the setup.
    pub fn join(&self, setup: &mut Setup) {
        match self {
            Self::Bare(name, index) => setup.shafts.push((name.clone(), *index)),
            Self::Reference(name) => setup.references.push(name.clone()),
        }
    }

    /// Takes it out again: it was the last to join.
    pub fn leave(&self, setup: &mut Setup) {
        match self {
            Self::Bare(..) => drop(setup.shafts.pop()),
            Self::Reference(_) => drop(setup.references.pop()),
        }
    }

    /// Its name.
    pub const fn name(&self) -> &ShaftName {
        match self {
            Self::Bare(name, _) | Self::Reference(name) => name,
        }
    }
}
