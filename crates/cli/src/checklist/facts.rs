//! What the stages are read from.

use jiff::Timestamp;
use quarterturn_journal::{BenchMeasures, GluedPart, State};
use quarterturn_tuning::{Advice, ShaftName, ShaftState};

use crate::curing::{Gluing, NOT_BEFORE, last};
use crate::workshop::Workshop;

/// A journal at a moment, read once.
pub struct Facts<'a> {
    pub state: &'a State,
    pub advice: &'a Advice,
    pub workshop: Workshop,
    pub glued: Vec<Gluing<'a>>,
    pub now: Timestamp,
    /// The shafts that are shot bare.
    pub bare: Vec<ShaftName>,
    /// Those that are fletched.
    pub fletched: Vec<ShaftName>,
}

impl<'a> Facts<'a> {
    pub fn of(state: &'a State, advice: &'a Advice, now: Timestamp) -> Self {
        let named = |wanted: ShaftState| -> Vec<ShaftName> {
            let shafts = state.roster().shafts.iter().filter(|standing| standing.state == wanted);
            shafts.map(|standing| standing.name.clone()).collect()
        };
        Self {
            state,
            advice,
            workshop: Workshop::of(state),
            glued: Gluing::all(state),
            now,
            bare: named(ShaftState::InUse),
            fletched: named(ShaftState::Fletched),
        }
    }

    /// The bare shafts of which something was not measured.
    pub fn unmeasured(&self, has: impl Fn(&BenchMeasures) -> bool) -> Vec<ShaftName> {
        self.bare.iter().filter(|name| !has(&self.state.measures(name))).cloned().collect()
    }

    /// Of `shafts` those on which a part was not glued, or still cures, with what is said of the latter.
    pub fn not_cured(
        &self,
        shafts: &[ShaftName],
        part: GluedPart,
    ) -> (Vec<ShaftName>, Option<String>) {
        let cures = |name: &ShaftName| {
            last(&self.glued, name, part).filter(|gluing| gluing.cures(self.now))
        };
        let latest = shafts.iter().filter_map(cures).max_by_key(|gluing| gluing.ready.timestamp());
        let waiting = |name: &&ShaftName| {
            last(&self.glued, name, part).is_none_or(|gluing| gluing.cures(self.now))
        };
        let missing = shafts.iter().filter(waiting).cloned().collect();
        (missing, latest.map(|gluing| format!("{NOT_BEFORE} {}", gluing.not_before())))
    }
}
