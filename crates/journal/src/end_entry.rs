//! An end as it is written in the journal and read from other programs.

use quarterturn_geometry::Millimetres;
use quarterturn_tuning::{End, Roster, Setup};
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

use crate::limit::Limit;
use crate::{Fault, Place, ShotEntry, Timestamp, What};

/// Two distances nearer than this are one: nobody paces them out better.
const SAME_DISTANCE: Millimetres = Millimetres::new(1.0);

/// The longest name of an evening, in characters.
const LONGEST_EVENING: usize = 40;

/// An end as it was entered; checked when it is appended.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct EndEntry {
    /// The shots, in the order in which they were entered.
    pub shots: Vec<ShotEntry>,
    /// When it was shot, as a [`Timestamp`]; left out: now.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub at: Option<String>,
    /// The evening it belongs to; left out: the date of `at`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub evening: Option<String>,
    /// Anything worth remembering.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
    /// The distance, m; left out: the journal's.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub distance_m: Option<f64>,
    /// Members that this version does not know: kept and not read.
    #[serde(flatten)]
    pub others: Map<String, Value>,
}

impl EndEntry {
    /// The members that are kept and not read: perhaps a word was mistyped.
    pub fn unread(&self) -> Vec<Place> {
        let of_the_end = self.others.keys().map(|name| Place::of(name));
        let of_shots = self.shots.iter().enumerate().flat_map(|(n, shot)| {
            shot.others.keys().map(move |name| Place::of("shots").item(n).member(name))
        });
        of_the_end.chain(of_shots).collect()
    }

    /// Writes out what was left out: indices as the marks stand, the time `now`, the evening.
    pub(crate) fn make_explicit(&mut self, roster: &Roster, now: &Timestamp) {
        for shot in &mut self.shots {
            let standing = shot.shaft.parse().ok().and_then(|name| roster.find(&name));
            shot.make_explicit(standing.map(|standing| standing.index_now));
        }
        let at = self.at.get_or_insert_with(|| now.to_string());
        if self.evening.is_none() {
            self.evening = at.parse().ok().map(|at: Timestamp| at.date().to_owned());
        }
    }

    /// Writes out what follows from what was read, of an end in which everything else is written out already.
    pub(crate) fn derive(&mut self) {
        self.shots.iter_mut().for_each(|shot| shot.make_explicit(None));
    }

    /// What of an end that is entered now cannot be meant, one fault a shot at most.
    pub(crate) fn cannot_be_meant(&self) -> Vec<Fault> {
        let shots = self.shots.iter().enumerate();
        shots.filter_map(|(n, shot)| Some(shot.can_be_meant().err()?.under("shots", n))).collect()
    }

    /// The end that is meant, in a journal begun by `setup`; one fault a shot at most.
    pub(crate) fn end(&self, setup: &Setup) -> Result<End, Vec<Fault>> {
        let mut faults = self.repeated_shafts();
        let mut keep = |fault| faults.push(fault);
        let mut shots = Vec::with_capacity(self.shots.len());
        for (n, shot) in self.shots.iter().enumerate() {
            match shot.shot(setup) {
                Ok(shot) => shots.push(shot),
                Err(fault) => keep(fault.under("shots", n)),
            }
        }
        if self.shots.is_empty() {
            keep(Fault::at("shots", What::Empty));
        }
        let evening = self.evening().map_err(&mut keep).unwrap_or_default();
        let distance = self.distance(setup).map_err(&mut keep).unwrap_or_default();
        if faults.is_empty() { Ok(End { shots, evening, distance }) } else { Err(faults) }
    }

    fn repeated_shafts(&self) -> Vec<Fault> {
        let repeated = |(n, shot): (usize, &ShotEntry)| {
            let before = self.shots.iter().take(n).any(|earlier| earlier.shaft == shot.shaft);
            let name = before.then(|| shot.shaft.parse().ok()).flatten()?;
            Some(Fault::at("shaft", What::Twice { name }).under("shots", n))
        };
        self.shots.iter().enumerate().filter_map(repeated).collect()
    }

    fn evening(&self) -> Result<String, Fault> {
        let at = self.at.as_deref().unwrap_or_default();
        at.parse::<Timestamp>().map_err(|what| Fault::at("at", what))?;
        let evening = self.evening.clone().unwrap_or_default();
        let long = evening.chars().count() > LONGEST_EVENING;
        if evening.trim().is_empty() || long || evening.contains(char::is_control) {
            Err(Fault::at("evening", What::BadEvening))
        } else {
            Ok(evening)
        }
    }

    fn distance(&self, setup: &Setup) -> Result<Option<Millimetres>, Fault> {
        let distance_m = self.distance_m.map(|m| Limit::DISTANCE.above_zero(m)).transpose();
        let distance_m = distance_m.map_err(|what| Fault::at("distance_m", what))?;
        let other =
            |distance: &Millimetres| (*distance - setup.distance).mm().abs() >= SAME_DISTANCE.mm();
        Ok(distance_m.map(Millimetres::from_metres).filter(other))
    }
}
