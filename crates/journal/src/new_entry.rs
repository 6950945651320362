//! How a journal was begun, as it is written in its first record.

use std::ops::RangeInclusive;

use quarterturn_geometry::{Index, Millimetres, Positions};
use quarterturn_tuning::{Matching, MissingMass, Policy, Setup, ShaftName};
use serde::{Deserialize, Serialize};

use crate::limit::Limit;
use crate::number::Number;
use crate::shot_entry::without_turns;
use crate::{FaceUnit, Fault, Place, What, Word};

/// The fewest arrows that are shot before walking up: a reference and a bare shaft beside it.
const FEWEST_ARROWS: usize = 2;

/// The most: as many as a large quiver holds.
const MOST_ARROWS: usize = 60;

/// The most bare shafts of one journal: with so many the next end is still found in a second or two.
pub const MOST_SHAFTS: usize = 72;

/// What an evening may be limited to, bare shots.
const EVENING_SHOTS: RangeInclusive<usize> = 1..=500;

/// How many turns of a nock are believed.
const NOCK_TURNS: RangeInclusive<usize> = 1..=100;

/// How a journal is begun; checked when it is created.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct NewEntry {
    /// The bare shafts, in the order in which they are named.
    pub shafts: Vec<NewShaft>,
    /// The names of the fletched references.
    pub references: Vec<String>,
    /// From the archer to the face, m.
    pub distance_m: f64,
    /// How far from the reference a shaft may land, mm.
    pub tolerance_mm: f64,
    /// The word of the [`FaceUnit`] that answers are given in.
    pub units: String,
    /// How many arrows are shot before walking up, references included.
    pub arrows_per_end: usize,
    /// How many evenly spaced positions a mark may take.
    pub positions: u16,
    /// The word of the [`Matching`]; left out: the reference.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub aim: Option<String>,
    /// The bare shots that are enough for an evening; left out: as many as [`Policy`] says.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub shots_per_evening: Option<usize>,
    /// How many turns a nock bears; left out: as many as [`Policy`] says.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub turns_per_nock: Option<usize>,
    /// What a bare shaft lacks in mass against the reference, grains.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bare_lighter_gr: Option<f64>,
    /// The mass of the fletched arrow, grains.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub arrow_gr: Option<f64>,
    /// The speed of the fletched arrow, m/s.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub arrow_speed_m_s: Option<f64>,
    /// The bow, in the archer's words.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bow: Option<String>,
    /// How the string is let go, in the archer's words.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub release: Option<String>,
    /// The hand that draws, in the archer's words.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub hand: Option<String>,
}

/// A bare shaft when the journal is begun.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct NewShaft {
    /// Its name.
    pub name: String,
    /// Where its mark stands, degrees clockwise from 12 o'clock.
    pub index_deg: f64,
}

impl NewEntry {
    /// Takes whole turns off the indices.
    pub(crate) fn make_explicit(&mut self) {
        for shaft in &mut self.shafts {
            shaft.index_deg = without_turns(shaft.index_deg);
        }
    }

    /// The unit that answers are given in.
    pub(crate) fn unit(&self) -> Result<FaceUnit, Fault> {
        FaceUnit::from_word(&self.units).map_err(|what| Fault::at("units", what))
    }

    /// The setup that is meant.
    pub(crate) fn setup(&self) -> Result<Setup, Fault> {
        self.names_differ()?;
        self.unit()?;
        let above_zero = |name, value, limit: Limit| {
            limit.above_zero(value).map_err(|what| Fault::at(name, what))
        };
        Ok(Setup {
            shafts: some("shafts", self.shafts()?)?,
            references: some("references", self.references()?)?,
            distance: above_zero("distance_m", self.distance_m, Limit::DISTANCE)
                .map(Millimetres::from_metres)?,
            tolerance: above_zero("tolerance_mm", self.tolerance_mm, Limit::TOLERANCE)
                .map(Millimetres::new)?,
            arrows_per_end: self.arrows_per_end()?,
            positions: self.positions()?,
            matching: self.matching()?,
            bare_lighter: self.bare_lighter()?,
        })
    }

    /// The archer's limits, and what else verdicts and plans are priced by.
    pub(crate) fn policy(&self) -> Result<Policy, Fault> {
        let usual = Policy::default();
        let counted = |name, count: Option<usize>, usual, range| {
            count.map_or(Ok(usual), |count| within(name, count, range))
        };
        let Self { shots_per_evening: shots, turns_per_nock: turns, .. } = *self;
        Ok(Policy {
            evening_shots: counted("shots_per_evening", shots, usual.evening_shots, EVENING_SHOTS)?,
            nock_turns: counted("turns_per_nock", turns, usual.nock_turns, NOCK_TURNS)?,
            ..usual
        })
    }

    /// That the journal is not too large to be answered; one that stands is read however large it is.
    pub(crate) fn can_be_served(&self) -> Result<(), Fault> {
        match (self.shafts.len(), MOST_SHAFTS) {
            (count, most) if count > most => {
                Err(Fault::at("shafts", What::TooManyShafts { count, most }))
            }
            _ => Ok(()),
        }
    }

    fn matching(&self) -> Result<Matching, Fault> {
        let word = self.aim.as_deref().map(Matching::from_word).transpose();
        word.map(Option::unwrap_or_default).map_err(|what| Fault::at("aim", what))
    }

    fn shafts(&self) -> Result<Vec<(ShaftName, Index)>, Fault> {
        let read = |(n, shaft): (usize, &NewShaft)| {
            let at = |name: &'static str| move |what| Fault::at(name, what).under("shafts", n);
            let name = shaft_name(&shaft.name).map_err(at("name"))?;
            let index_deg = Limit::INDEX.either_way(shaft.index_deg).map_err(at("index_deg"))?;
            Ok((name, Index::from_degrees(index_deg)))
        };
        self.shafts.iter().enumerate().map(read).collect()
    }

    fn references(&self) -> Result<Vec<ShaftName>, Fault> {
        let read = |(n, name): (usize, &String)| {
            let place = Place::of("references").item(n);
            shaft_name(name).map_err(|what| Fault { place, what })
        };
        self.references.iter().enumerate().map(read).collect()
    }

    fn names_differ(&self) -> Result<(), Fault> {
        let shafts = self.shafts.iter().enumerate();
        let shafts = shafts.map(|(n, shaft)| (&shaft.name, Place::of("shafts").item(n)));
        let references = self.references.iter().enumerate();
        let references = references.map(|(n, name)| (name, Place::of("references").item(n)));
        let mut seen = Vec::new();
        for (name, place) in shafts.chain(references) {
            if seen.contains(&name) {
                let what = shaft_name(name).map_or_else(|bad| bad, |name| What::Twice { name });
                return Err(Fault { place, what });
            }
            seen.push(name);
        }
        Ok(())
    }

    fn arrows_per_end(&self) -> Result<usize, Fault> {
        within("arrows_per_end", self.arrows_per_end, FEWEST_ARROWS..=MOST_ARROWS)
    }

    fn positions(&self) -> Result<Positions, Fault> {
        Positions::new(self.positions).map_err(|bad| Fault::at("positions", What::Positions(bad)))
    }

    fn bare_lighter(&self) -> Result<Option<MissingMass>, Fault> {
        let lighter = Number::new("bare_lighter_gr", self.bare_lighter_gr);
        let arrow = Number::new("arrow_gr", self.arrow_gr).above_zero(Limit::MASS)?;
        let speed = Number::new("arrow_speed_m_s", self.arrow_speed_m_s);
        let (lighter, speed) = (lighter.above_zero(Limit::MASS)?, speed.above_zero(Limit::SPEED)?);
        lighter.needs(arrow)?;
        lighter.needs(speed)?;
        let all = lighter.value().zip(arrow.value()).zip(speed.value());
        Ok(all.map(|((lighter_gr, arrow_gr), speed_m_s)| MissingMass {
            lighter_gr,
            arrow_gr,
            speed_m_s,
        }))
    }
}

fn within(name: &'static str, count: usize, range: RangeInclusive<usize>) -> Result<usize, Fault> {
    let (least, most) = range.into_inner();
    if (least..=most).contains(&count) {
        Ok(count)
    } else {
        Err(Fault::at(name, What::Count { count, least, most }))
    }
}

fn shaft_name(name: &str) -> Result<ShaftName, What> {
    name.parse().map_err(|_| What::BadName { name: name.to_owned() })
}

fn some<T>(name: &'static str, list: Vec<T>) -> Result<Vec<T>, Fault> {
    if list.is_empty() { Err(Fault::at(name, What::Empty)) } else { Ok(list) }
}
