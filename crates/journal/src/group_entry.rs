//! A group of finished arrows, as it is written in the journal.

use std::collections::BTreeMap;

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{Group, Head, Roster, Setup, ShaftName, ShaftState, Start};
use serde::{Deserialize, Serialize};

use crate::limit::Limit;
use crate::names::known;
use crate::quiver_entry::single_head;
use crate::{EndEntry, Fault, ShotEntry, Timestamp, What};

/// Finished arrows shot at one distance with one kind of head; checked when it is appended.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct GroupEntry {
    /// From the archer to the face, m.
    pub distance_m: f64,
    /// "field", or the name that the archer gives a broadhead.
    pub head: String,
    /// Whether it was the first shot of the day; left out: it was not.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub cold: bool,
    /// When it was shot, as a [`Timestamp`]; left out: now.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub at: Option<String>,
    /// Which single head each arrow carried, by its own name; left out: those that are recorded as mounted.
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub mounted: BTreeMap<String, String>,
    /// The shots, each measured from its own spot.
    pub shots: Vec<ShotEntry>,
}

impl GroupEntry {
    /// Writes out what was left out: indices as the marks stand, the time `now`, and of a broadhead the heads `mounted`.
    pub(crate) fn make_explicit<'a>(
        &mut self,
        roster: &Roster,
        now: &Timestamp,
        mounted: impl Fn(&str) -> Option<&'a str>,
    ) {
        for shot in &mut self.shots {
            let standing = shot.shaft.parse().ok().and_then(|name| roster.find(&name));
            shot.make_explicit(standing.map(|standing| standing.index_now));
        }
        self.at.get_or_insert_with(|| now.to_string());
        if self.head.parse() != Ok(Head::Field) {
            for shot in &self.shots {
                if let Some(head) = mounted(&shot.shaft) {
                    let unsaid = self.mounted.entry(shot.shaft.clone());
                    unsaid.or_insert_with(|| head.to_owned());
                }
            }
        }
    }

    /// What of a group that is entered now cannot be meant.
    pub(crate) fn cannot_be_meant(&self) -> Vec<Fault> {
        self.as_end().cannot_be_meant()
    }

    /// The group that is meant, in a journal begun by `setup`.
    pub(crate) fn group(&self, setup: &Setup) -> Result<Group, Vec<Fault>> {
        let shots = self.as_end().end(setup)?.shots;
        let head: Result<Head, _> = self.head.parse();
        let head = head.map_err(|_| vec![Fault::at("head", What::BadHead)])?;
        let distance_m = Limit::DISTANCE.above_zero(self.distance_m);
        let distance_m = distance_m.map_err(|what| vec![Fault::at("distance_m", what)])?;
        if self.cold && shots.len() > 1 {
            return Err(vec![Fault::at("cold", What::ManyCold { count: shots.len() })]);
        }
        let start = if self.cold { Start::Cold } else { Start::Warm };
        let mounted = self.mounted(setup).map_err(|fault| vec![fault])?;
        Ok(Group { distance: Millimetres::from_metres(distance_m), head, start, mounted, shots })
    }

    /// Which single head each arrow carried.
    fn mounted(&self, setup: &Setup) -> Result<BTreeMap<ShaftName, String>, Fault> {
        let at = |what| Fault::at("mounted", what);
        let one = |(arrow, head): (&String, &String)| {
            single_head(head).map_err(at)?;
            Ok((known(setup, arrow).map_err(at)?, head.clone()))
        };
        self.mounted.iter().map(one).collect()
    }

    /// The shots as those of an end, which are held to the same.
    fn as_end(&self) -> EndEntry {
        let at = self.at.clone();
        let evening = at.as_deref().and_then(|at| at.parse().ok());
        EndEntry {
            shots: self.shots.clone(),
            evening: evening.map(|at: Timestamp| at.date().to_owned()),
            at,
            ..EndEntry::default()
        }
    }
}

/// The shots of a group whose arrow is not fletched, or not to be shot.
pub(crate) fn not_finished(group: &Group, roster: &Roster) -> Vec<Fault> {
    let fault = |(n, name): (usize, &ShaftName)| {
        let reference = roster.references.iter().any(|reference| reference.name == *name);
        let state = roster.find(name)?.state;
        let name = name.clone();
        let what = match (state, reference, &group.head) {
            (ShaftState::InUse, true, _) | (ShaftState::Fletched, _, _) => return None,
            (ShaftState::InUse, false, Head::Broadhead(_)) => What::BroadheadOnBare { name },
            (ShaftState::InUse, false, Head::Field) => What::NotFletched { name },
            _ => What::OutOfUse { name, state },
        };
        Some(Fault::at("shaft", what).under("shots", n))
    };
    let names = group.shots.iter().map(|shot| &shot.shaft);
    names.enumerate().filter_map(fault).collect()
}
