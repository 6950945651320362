//! What a column holds.

use quarterturn_journal::ShotEntry;

use super::TableFault;
use crate::closest;
use crate::quantity::Unit;

/// What a column holds, and in which unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Member {
    /// The number of the record.
    Record,
    /// Its id.
    RecordId,
    /// When it was recorded.
    RecordedAt,
    /// Its kind.
    Kind,
    /// Which end the shot belongs to: rows in which it is the same are one end.
    End,
    /// The evening.
    Evening,
    /// When it was shot.
    At,
    /// A note.
    Note,
    /// The distance, and how many metres its unit is.
    Distance(f64),
    /// The shaft.
    Shaft,
    /// The call.
    Call,
    /// The flags, blanks between them.
    Flags,
    /// What an eye said of the tail.
    TailSeen,
    /// A number of the shot, and how many of its own unit the column's is.
    Number(&'static Number, f64),
    /// What has no column, as JSON.
    Data,
}

/// A number of a shot.
#[derive(Debug, PartialEq)]
pub(super) struct Number {
    /// Its name without the unit.
    pub stem: &'static str,
    /// Its name in the JSON.
    pub name: &'static str,
    units: Units,
}

#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Units {
    /// On the face, or of an arrow.
    Length,
    /// Of an arrow.
    Mass,
    /// A lean.
    Degrees,
    /// Somewhere on the clock.
    Clock,
}

/// Every number of a shot, in the order in which they are written.
pub(super) static NUMBERS: [Number; 13] = {
    const fn number(stem: &'static str, name: &'static str, units: Units) -> Number {
        Number { stem, name, units }
    }
    [
        number("index", "index_deg", Units::Clock),
        number("x", "x_mm", Units::Length),
        number("y", "y_mm", Units::Length),
        number("lean_x", "lean_x_deg", Units::Degrees),
        number("lean_y", "lean_y_deg", Units::Degrees),
        number("read_sd", "read_sd_mm", Units::Length),
        number("lean_sd", "lean_sd_deg", Units::Degrees),
        number("out", "out_mm", Units::Length),
        number("toward", "toward_deg", Units::Clock),
        number("tail_x", "tail_x_mm", Units::Length),
        number("tail_y", "tail_y_mm", Units::Length),
        number("protruding", "protruding_mm", Units::Length),
        number("tail_toward", "tail_toward_deg", Units::Clock),
    ]
};

/// The columns that hold no number.
const PLAIN: [(&str, Member); 13] = [
    ("record", Member::Record),
    ("record_id", Member::RecordId),
    ("recorded_at", Member::RecordedAt),
    ("kind", Member::Kind),
    ("end", Member::End),
    ("evening", Member::Evening),
    ("at", Member::At),
    ("note", Member::Note),
    ("shaft", Member::Shaft),
    ("call", Member::Call),
    ("flags", Member::Flags),
    ("tail_seen", Member::TailSeen),
    ("data", Member::Data),
];

/// Of a longer name the beginning is enough to be known again, and none is near it.
const LONGEST_NAME: usize = 24;

/// Units of the distance, in metres.
const DISTANCES: [(&str, f64); 3] = [("m", 1.0), ("yd", 0.9144), ("ft", 0.3048)];

impl Member {
    /// What the column with this name holds.
    pub fn named(name: &str) -> Result<Self, TableFault> {
        let name = name.to_lowercase();
        if let Some((_, member)) = PLAIN.iter().find(|(plain, _)| *plain == name) {
            return Ok(*member);
        }
        let (stem, unit) = name.rsplit_once('_').unwrap_or((&name, ""));
        if let Some((_, metres)) =
            DISTANCES.iter().find(|(symbol, _)| stem == "distance" && *symbol == unit)
        {
            return Ok(Self::Distance(*metres));
        }
        for number in &NUMBERS {
            if stem == number.stem
                && let Some((_, worth)) = number.units.all().find(|(symbol, _)| *symbol == unit)
            {
                return Ok(Self::Number(number, worth));
            }
            if name == number.stem || stem == number.stem {
                return Err(TableFault::no_unit(&name, number.stem, number.units.symbols()));
            }
        }
        if name == "distance" || stem == "distance" {
            let units = DISTANCES.map(|(symbol, _)| symbol).to_vec();
            return Err(TableFault::no_unit(&name, "distance", units));
        }
        let meant = if name.len() <= LONGEST_NAME { Self::nearest(&name) } else { None };
        let name = name.chars().take(LONGEST_NAME).collect();
        Err(TableFault::UnknownColumn { name, meant })
    }

    /// Whether a column can have this name.
    pub fn is_named(name: &str) -> bool {
        let name = name.to_lowercase();
        PLAIN.iter().any(|(plain, _)| *plain == name)
            || name.rsplit_once('_').is_some_and(|(stem, _)| {
                stem == "distance" || NUMBERS.iter().any(|number| number.stem == stem)
            })
    }

    fn nearest(name: &str) -> Option<String> {
        let known = Self::names();
        closest(name, known.iter().map(String::as_str)).map(str::to_owned)
    }

    fn names() -> Vec<String> {
        let numbers = NUMBERS.iter().flat_map(|number| {
            number.units.all().map(move |(symbol, _)| format!("{}_{symbol}", number.stem))
        });
        let distances = DISTANCES.iter().map(|(symbol, _)| format!("distance_{symbol}"));
        PLAIN.iter().map(|(name, _)| (*name).to_owned()).chain(numbers).chain(distances).collect()
    }

    /// Whether both say the same thing, in whatever units.
    pub fn is_same(self, other: Self) -> bool {
        match (self, other) {
            (Self::Number(one, _), Self::Number(other, _)) => one == other,
            (Self::Distance(_), Self::Distance(_)) => true,
            _ => self == other,
        }
    }
}

impl Units {
    /// The symbols, and what each is worth in the unit of the JSON.
    pub fn all(self) -> impl Iterator<Item = (&'static str, f64)> {
        let lengths = [Unit::MILLIMETRE, Unit::CENTIMETRE, Unit::INCH];
        let units: Vec<_> = match self {
            Self::Length => lengths.map(|unit| (unit.symbol, unit.to_base(1.0))).to_vec(),
            Self::Mass => vec![("gr", 1.0), ("g", Unit::GRAM.to_base(1.0))],
            Self::Degrees => vec![("deg", 1.0)],
            Self::Clock => vec![("deg", 1.0), ("hour", 30.0)],
        };
        units.into_iter()
    }

    pub fn symbols(self) -> Vec<&'static str> {
        self.all().map(|(symbol, _)| symbol).collect()
    }
}

impl Number {
    /// Where the shot keeps it.
    pub fn of<'a>(&self, shot: &'a mut ShotEntry) -> &'a mut Option<f64> {
        match self.name {
            "index_deg" => &mut shot.index_deg,
            "x_mm" => &mut shot.x_mm,
            "y_mm" => &mut shot.y_mm,
            "lean_x_deg" => &mut shot.lean_x_deg,
            "lean_y_deg" => &mut shot.lean_y_deg,
            "read_sd_mm" => &mut shot.read_sd_mm,
            "lean_sd_deg" => &mut shot.lean_sd_deg,
            "out_mm" => &mut shot.out_mm,
            "toward_deg" => &mut shot.toward_deg,
            "tail_x_mm" => &mut shot.tail_x_mm,
            "tail_y_mm" => &mut shot.tail_y_mm,
            "protruding_mm" => &mut shot.protruding_mm,
            _ => &mut shot.tail_toward_deg,
        }
    }
}
