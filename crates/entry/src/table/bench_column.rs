//! The columns of a table of workshop measures, by their names.

use quarterturn_geometry::Index;
use quarterturn_journal::BenchMeasures;

use super::TableFault;
use super::member::Units;
use crate::closest;

/// What a column of measures holds, and in which unit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum BenchColumn {
    /// The shaft or reference.
    Shaft,
    /// A number, and how many of its own unit the column's is.
    Number(&'static Measured, f64),
    /// How far it sagged with this side up, and how many millimetres the column's unit is.
    Sag {
        /// The side.
        side_deg: f64,
        /// The unit.
        mm: f64,
    },
    /// By which standard it sagged.
    SpineStandard,
}

/// A number of the workshop.
#[derive(Debug)]
pub(super) struct Measured {
    /// Its name without the unit.
    stem: &'static str,
    /// Its name in the JSON.
    pub name: &'static str,
    units: Units,
    of: fn(&mut BenchMeasures) -> &mut Option<f64>,
}

/// Each has one name.
impl PartialEq for Measured {
    fn eq(&self, other: &Self) -> bool {
        self.name == other.name
    }
}

/// Every number of the workshop, in the order of the work.
static MEASURED: [Measured; 15] = {
    const fn measured(
        stem: &'static str,
        name: &'static str,
        units: Units,
        of: fn(&mut BenchMeasures) -> &mut Option<f64>,
    ) -> Measured {
        Measured { stem, name, units, of }
    }
    use Units::{Clock, Length, Mass};
    [
        measured("mass", "mass_gr", Mass, |m| &mut m.mass_gr),
        measured("length", "length_mm", Length, |m| &mut m.length_mm),
        measured("straightness", "straightness_mm", Length, |m| &mut m.straightness_mm),
        measured("straightness_point", "straightness_point_mm", Length, |m| {
            &mut m.straightness_point_mm
        }),
        measured("straightness_nock", "straightness_nock_mm", Length, |m| {
            &mut m.straightness_nock_mm
        }),
        measured("crooked_side", "crooked_side_deg", Clock, |m| &mut m.crooked_side_deg),
        measured("cut_point", "cut_point_mm", Length, |m| &mut m.cut_point_mm),
        measured("cut_nock", "cut_nock_mm", Length, |m| &mut m.cut_nock_mm),
        measured("stiff_side", "stiff_side_deg", Clock, |m| &mut m.stiff_side_deg),
        measured("heavy_side", "heavy_side_deg", Clock, |m| &mut m.heavy_side_deg),
        measured("square_runout", "square_runout_mm", Length, |m| &mut m.square_runout_mm),
        measured("wobble", "wobble_mm", Length, |m| &mut m.wobble_mm),
        measured("bare_mass", "bare_mass_gr", Mass, |m| &mut m.bare_mass_gr),
        measured("finished_mass", "finished_mass_gr", Mass, |m| &mut m.finished_mass_gr),
        measured("balance", "balance_mm", Length, |m| &mut m.balance_mm),
    ]
};

/// What a column of sags begins with; its side follows in degrees, and the unit.
const SAG: &str = "spine_";

impl BenchColumn {
    /// What the column with this name holds.
    pub fn named(name: &str) -> Result<Self, TableFault> {
        let name = name.to_lowercase();
        match name.as_str() {
            "shaft" => return Ok(Self::Shaft),
            "spine_standard" => return Ok(Self::SpineStandard),
            _ => {}
        }
        if let Some(measured) = MEASURED.iter().find(|measured| measured.stem == name) {
            return Err(TableFault::no_unit(&name, measured.stem, measured.units.symbols()));
        }
        let (stem, unit) = name.rsplit_once('_').unwrap_or((&name, ""));
        if let Some(measured) = MEASURED.iter().find(|measured| measured.stem == stem) {
            let units = measured.units;
            let worth = units.all().find(|(symbol, _)| *symbol == unit).map(|(_, worth)| worth);
            return worth
                .map(|worth| Self::Number(measured, worth))
                .ok_or_else(|| TableFault::no_unit(&name, measured.stem, units.symbols()));
        }
        Self::sag(stem, unit).unwrap_or_else(|| {
            let stems = MEASURED.iter().map(|measured| measured.name);
            let meant = closest(&name, stems).map(str::to_owned);
            Err(TableFault::UnknownColumn {
                name: name.chars().take(LONGEST_NAME).collect(),
                meant,
            })
        })
    }

    /// `spine_90_in`: the sag with that side up.
    fn sag(stem: &str, unit: &str) -> Option<Result<Self, TableFault>> {
        let side_deg =
            stem.strip_prefix(SAG)?.parse().ok().filter(|side: &f64| side.is_finite())?;
        let lengths = Units::Length.all();
        let worth = lengths.into_iter().find(|(symbol, _)| *symbol == unit);
        Some(worth.map_or_else(
            || Err(TableFault::no_unit(&format!("{stem}_{unit}"), stem, Units::Length.symbols())),
            |(_, mm)| Ok(Self::Sag { side_deg, mm }),
        ))
    }

    /// Whether a column can have this name, and no column of a table of shots can.
    pub fn is_measure(name: &str) -> bool {
        matches!(Self::named(name), Ok(column) if column != Self::Shaft)
    }

    /// Whether both say the same thing, in whatever units.
    pub fn is_same(self, other: Self) -> bool {
        match (self, other) {
            (Self::Number(one, _), Self::Number(other, _)) => one == other,
            (Self::Sag { side_deg: one, .. }, Self::Sag { side_deg: other, .. }) => {
                Index::from_degrees(one).is_at(Index::from_degrees(other))
            }
            _ => self == other,
        }
    }
}

impl Measured {
    /// Where the measures keep it.
    pub fn of<'a>(&self, measures: &'a mut BenchMeasures) -> &'a mut Option<f64> {
        (self.of)(measures)
    }
}

/// Of a longer name the beginning is enough to be known again.
const LONGEST_NAME: usize = 24;
