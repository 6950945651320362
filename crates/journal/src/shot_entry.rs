//! One shot as it is written in the journal and read from other programs.

use quarterturn_geometry::{Angle, Index, Lean, Millimetres, Point};
use quarterturn_tuning::{Call, Flag, Hit, Setup, Shot};
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};

use crate::as_read::USUAL_PROTRUDING_MM;
use crate::limit::Limit;
use crate::names::known;
use crate::number::Number;
use crate::{Fault, Place, TailSeen, What, Word};

/// A whole turn of the clock.
const FULL_TURN_DEG: f64 = 360.0;

/// sin 60°: farther over, an arrow does not stick.
const FARTHEST_TAIL: f64 = 0.866;

/// One shot as it was entered, in the units of its members' names; checked when it is appended.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct ShotEntry {
    /// The name of the shaft or reference.
    pub shaft: String,
    /// Where its mark stood, degrees clockwise from 12 o'clock; left out: as last recorded for that shaft.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub index_deg: Option<f64>,
    /// How far right of the spot it hit, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub x_mm: Option<f64>,
    /// How far above the spot it hit, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub y_mm: Option<f64>,
    /// How far its tail leaned to the right, degrees.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lean_x_deg: Option<f64>,
    /// How far its tail leaned up, degrees.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lean_y_deg: Option<f64>,
    /// What the archer said before walking up: the word of a [`Call`].
    #[serde(skip_serializing_if = "Option::is_none")]
    pub call: Option<String>,
    /// What else was noticed: the words of [`Flag`]s.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub flags: Vec<String>,
    /// Standard deviation of reading the hit, per axis, mm; left out: that of a tape.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub read_sd_mm: Option<f64>,
    /// Standard deviation of reading the lean, per axis, degrees; left out: that of an eye.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub lean_sd_deg: Option<f64>,
    /// How far from the spot it hit, where it was read by clock and distance, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub out_mm: Option<f64>,
    /// Toward where, degrees clockwise from 12 o'clock.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub toward_deg: Option<f64>,
    /// How far the tail stood to the right, where it was read by a tape, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tail_x_mm: Option<f64>,
    /// How far the tail stood up, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tail_y_mm: Option<f64>,
    /// How far the arrow protruded, mm; left out: as much as is usual, and less well known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub protruding_mm: Option<f64>,
    /// What an eye said of the tail: the word of a [`TailSeen`].
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tail_seen: Option<String>,
    /// Toward where it stood off, by eye, degrees clockwise from 12 o'clock.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub tail_toward_deg: Option<f64>,
    /// Members that this version does not know: kept and not read.
    #[serde(flatten)]
    pub others: Map<String, Value>,
}

impl ShotEntry {
    /// Writes out what was left out and what follows from what was read, takes whole turns off, and makes −0 to 0.
    pub(crate) fn make_explicit(&mut self, index_now: Option<Index>) {
        self.index_deg = self.index_deg.or(index_now.map(Index::degrees)).map(without_turns);
        self.derive();
        let numbers = [&mut self.x_mm, &mut self.y_mm, &mut self.lean_x_deg, &mut self.lean_y_deg];
        numbers.into_iter().flatten().for_each(|number| *number = without_sign_of_zero(*number));
    }

    /// The shot that is meant, in a journal begun by `setup`.
    pub(crate) fn shot(&self, setup: &Setup) -> Result<Shot, Fault> {
        let shaft = known(setup, &self.shaft).map_err(|what| Fault::at("shaft", what))?;
        let index_deg =
            self.index_deg.ok_or_else(|| Fault::whole(What::Missing { member: "index_deg" }))?;
        let index_deg = Limit::INDEX.either_way(index_deg);
        let index_deg = index_deg.map_err(|what| Fault::at("index_deg", what))?;
        let call = self.call.as_deref().map(Call::from_word).transpose();
        let call = call.map_err(|what| Fault::at("call", what))?;
        let flags = self.flags()?;
        let hit = self.hit()?;
        if hit.is_none() && !flags.contains(&Flag::Lost) && !flags.contains(&Flag::Broken) {
            return Err(Fault::whole(What::NoHit));
        }
        Ok(Shot { shaft, index: Index::from_degrees(index_deg), hit, call, flags })
    }

    fn flags(&self) -> Result<Vec<Flag>, Fault> {
        let flag = |(n, word): (usize, &String)| {
            let place = Place::of("flags").item(n);
            Flag::from_word(word).map_err(|what| Fault { place, what })
        };
        self.flags.iter().enumerate().map(flag).collect()
    }

    /// That what is entered now can be meant; what stands in a journal is not asked that.
    pub(crate) fn can_be_meant(&self) -> Result<(), Fault> {
        self.other_units()?;
        self.as_read_can_be()
    }

    /// That no number stands under a name of another unit, where the one that is read is missing.
    fn other_units(&self) -> Result<(), Fault> {
        let read = [
            ("x_mm", self.x_mm.is_some() || self.out_mm.is_some(), "in millimetres"),
            ("y_mm", self.y_mm.is_some() || self.out_mm.is_some(), "in millimetres"),
            ("lean_x_deg", self.lean_x_deg.is_some(), "in degrees"),
            ("lean_y_deg", self.lean_y_deg.is_some(), "in degrees"),
        ];
        for (expected, is_there, unit) in read {
            let (stem, _) = expected.rsplit_once('_').unwrap_or_default();
            let of_stem = |name: &&String| {
                name.as_str() == stem || name.rsplit_once('_').is_some_and(|(own, _)| own == stem)
            };
            if let (false, Some(found)) = (is_there, self.others.keys().find(of_stem)) {
                let what = What::OtherUnit { found: found.clone(), expected, unit };
                return Err(Fault { place: Place::of(found), what });
            }
        }
        Ok(())
    }

    /// That what was read by clock, tape or eye can be.
    fn as_read_can_be(&self) -> Result<(), Fault> {
        let toward = Number::new("toward_deg", self.toward_deg).either_way(Limit::INDEX)?;
        Number::new("out_mm", self.out_mm).either_way(Limit::HIT)?.with(toward)?;
        let y = Number::new("tail_y_mm", self.tail_y_mm).either_way(Limit::ARROW)?;
        let x = Number::new("tail_x_mm", self.tail_x_mm).either_way(Limit::ARROW)?;
        let protruding =
            Number::new("protruding_mm", self.protruding_mm).above_zero(Limit::ARROW)?;
        protruding.needs(x)?;
        if let Some([x_mm, y_mm]) = x.with(y)? {
            let length_mm = protruding.value().unwrap_or(USUAL_PROTRUDING_MM);
            let most = length_mm * FARTHEST_TAIL;
            let value = x_mm.hypot(y_mm);
            if value > most {
                let what = What::Beyond { value, most: most.floor(), unit: "mm" };
                return Err(Fault::at("tail_x_mm", what));
            }
        }
        let seen = self.tail_seen.as_deref().map(TailSeen::from_word).transpose();
        let seen = seen.map_err(|what| Fault::at("tail_seen", what))?;
        let toward = Number::new("tail_toward_deg", self.tail_toward_deg);
        match (seen, toward.either_way(Limit::INDEX)?.value()) {
            (None | Some(TailSeen::None), Some(_)) => {
                Err(Fault::at("tail_toward_deg", What::Alone { needs: "tail_seen" }))
            }
            (Some(TailSeen::Some | TailSeen::Much | TailSeen::Side), None) => {
                Err(Fault::at("tail_seen", What::Alone { needs: "tail_toward_deg" }))
            }
            _ => Ok(()),
        }
    }

    fn hit(&self) -> Result<Option<Hit>, Fault> {
        let x = Number::new("x_mm", self.x_mm).either_way(Limit::HIT)?;
        let y = Number::new("y_mm", self.y_mm).either_way(Limit::HIT)?;
        let lean_x = Number::new("lean_x_deg", self.lean_x_deg).either_way(Limit::LEAN)?;
        let lean_y = Number::new("lean_y_deg", self.lean_y_deg).either_way(Limit::LEAN)?;
        let read_sd = Number::new("read_sd_mm", self.read_sd_mm).above_zero(Limit::READ_SD)?;
        let lean_sd = Number::new("lean_sd_deg", self.lean_sd_deg).above_zero(Limit::LEAN_SD)?;
        lean_x.needs(x)?;
        read_sd.needs(x)?;
        lean_sd.needs(lean_x)?;
        let lean = lean_x.with(lean_y)?.map(|[x_deg, y_deg]| Lean::from_degrees(x_deg, y_deg));
        Ok(x.with(y)?.map(|[x_mm, y_mm]| Hit {
            at: Point::new(x_mm, y_mm),
            lean,
            read_sd: read_sd.value().map(Millimetres::new),
            lean_sd: lean_sd.value().map(Angle::from_degrees),
        }))
    }
}

/// The same index in [0, 360) degrees; what is more than a turn stays so, until it is refused.
pub(crate) fn without_turns(deg: f64) -> f64 {
    if deg.abs() <= FULL_TURN_DEG {
        without_sign_of_zero(Index::from_degrees(deg).degrees())
    } else {
        deg
    }
}

/// The same number, with 0 for −0.
fn without_sign_of_zero(number: f64) -> f64 {
    number + 0.0
}
