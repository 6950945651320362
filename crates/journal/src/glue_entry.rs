//! That something was glued, as it is written in the journal.

use quarterturn_tuning::Setup;
use serde::{Deserialize, Serialize};

use crate::limit::Limit;
use crate::names::known;
use crate::{Fault, GluedPart, Place, Timestamp, What, Word};

/// What was glued on some shafts, and how long it cures; checked when it is appended.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct GlueEntry {
    /// The shafts or references.
    pub shafts: Vec<String>,
    /// The word of the [`GluedPart`].
    pub part: String,
    /// How long the glue cures before it may be shot, h.
    pub cure_h: f64,
    /// When it was glued, as a [`Timestamp`]; left out: now.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub at: Option<String>,
}

impl GlueEntry {
    /// Writes out when it was glued.
    pub(crate) fn make_explicit(&mut self, now: &Timestamp) {
        self.at.get_or_insert_with(|| now.to_string());
    }

    /// That it can be, in a journal that has `setup`.
    pub(crate) fn can_be(&self, setup: &Setup) -> Result<(), Fault> {
        if self.shafts.is_empty() {
            return Err(Fault::at("shafts", What::Empty));
        }
        for (n, name) in self.shafts.iter().enumerate() {
            let twice = self.shafts.iter().take(n).any(|earlier| earlier == name);
            let found = known(setup, name)
                .and_then(|name| if twice { Err(What::Twice { name }) } else { Ok(()) });
            found.map_err(|what| Fault { place: Place::of("shafts").item(n), what })?;
        }
        GluedPart::from_word(&self.part).map_err(|what| Fault::at("part", what))?;
        Limit::CURE.above_zero(self.cure_h).map_err(|what| Fault::at("cure_h", what))?;
        let at = self.at.as_deref().map(str::parse::<Timestamp>).transpose();
        at.map(|_| ()).map_err(|what| Fault::at("at", what))
    }
}
