//! What can be read off the measures of one shaft.

use quarterturn_bench::{SpineReading, SpineRound, SpineStandard, Wanted, front_of_centre_percent};
use quarterturn_geometry::{Index, Millimetres};
use quarterturn_journal::{BenchMeasures, SpineEntry};

/// One number of a shaft, measured or worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Gauge {
    Mass,
    Length,
    Straightness,
    StraightnessPoint,
    StraightnessNock,
    Spine,
    SpineSpread,
    Square,
    Wobble,
    BareMass,
    FinishedMass,
    Balance,
    FrontOfCentre,
}

/// How a gauge is said, and how fine household tools read it.
pub struct Said {
    /// In a sentence.
    pub name: &'static str,
    /// At the head of a column.
    pub heading: &'static str,
    /// In JSON, with its unit.
    pub member: &'static str,
    /// Behind a number, with the blank before it.
    pub unit: &'static str,
    pub decimals: usize,
    /// What the tool can just tell apart.
    pub resolution: f64,
}

impl Gauge {
    /// Every gauge, in the order of the work.
    pub const ALL: [Self; 13] = [
        Self::Mass,
        Self::Length,
        Self::Straightness,
        Self::StraightnessPoint,
        Self::StraightnessNock,
        Self::Spine,
        Self::SpineSpread,
        Self::Square,
        Self::Wobble,
        Self::BareMass,
        Self::FinishedMass,
        Self::Balance,
        Self::FrontOfCentre,
    ];

    /// How it is said. The resolutions are those of a jewellery scale, a tape, a feeler gauge and a dial gauge (common
    /// practice).
    #[rustfmt::skip]
    pub const fn said(self) -> Said {
        let (name, heading, member, unit, decimals, resolution) = match self {
            Self::Mass => ("mass", "mass gr", "mass_gr", " gr", 1, 0.1),
            Self::Length => ("length", "length mm", "length_mm", " mm", 1, 0.5),
            Self::Straightness => ("straightness", "straight mm", "straightness_mm", " mm", 2, 0.05),
            Self::StraightnessPoint => ("straightness at the point", "at point", "straightness_point_mm", " mm", 2, 0.05),
            Self::StraightnessNock => ("straightness at the nock", "at nock", "straightness_nock_mm", " mm", 2, 0.05),
            Self::Spine => ("spine", "spine in", "spine_in", " in", 3, 0.001),
            Self::SpineSpread => ("spine around the shaft", "round in", "spine_spread_in", " in", 3, 0.001),
            Self::Square => ("end out of square", "square mm", "square_runout_mm", " mm", 2, 0.05),
            Self::Wobble => ("wobble", "wobble mm", "wobble_mm", " mm", 2, 0.05),
            Self::BareMass => ("bare mass", "bare gr", "bare_mass_gr", " gr", 1, 0.1),
            Self::FinishedMass => ("finished mass", "finished gr", "finished_mass_gr", " gr", 1, 0.1),
            Self::Balance => ("balance point", "balance mm", "balance_mm", " mm", 1, 1.0),
            Self::FrontOfCentre => ("front of centre", "FOC %", "front_of_centre_percent", " %", 1, 0.2),
        };
        Said { name, heading, member, unit, decimals, resolution }
    }

    /// Its value for one shaft, where that is known.
    pub fn of(self, measures: &BenchMeasures) -> Option<f64> {
        match self {
            Self::Mass => measures.mass_gr,
            Self::Length => measures.length_mm,
            Self::Straightness => measures.straightness_mm,
            Self::StraightnessPoint => measures.straightness_point_mm,
            Self::StraightnessNock => measures.straightness_nock_mm,
            Self::Spine => spine(measures).map(|round| round.mean.inches()),
            Self::SpineSpread => {
                let round = spine(measures).filter(|round| round.n > 1);
                round.map(|round| round.spread.inches())
            }
            Self::Square => measures.square_runout_mm,
            Self::Wobble => measures.wobble_mm,
            Self::BareMass => measures.bare_mass_gr,
            Self::FinishedMass => measures.finished_mass_gr,
            Self::Balance => measures.balance_mm,
            Self::FrontOfCentre => front_of_centre(measures),
        }
    }

    /// What is wanted of it where shafts are chosen, if it is looked at there.
    pub const fn wanted(self) -> Option<Wanted> {
        match self {
            Self::Mass
            | Self::Spine
            | Self::BareMass
            | Self::FinishedMass
            | Self::FrontOfCentre => Some(Wanted::Alike),
            Self::Straightness
            | Self::StraightnessPoint
            | Self::StraightnessNock
            | Self::SpineSpread
            | Self::Wobble => Some(Wanted::Small),
            _ => None,
        }
    }

    /// "312.4 gr".
    pub fn value(self, value: f64) -> String {
        format!("{}{}", self.bare(value), self.said().unit)
    }

    /// "312.4".
    pub fn bare(self, value: f64) -> String {
        format!("{value:.decimals$}", decimals = self.said().decimals)
    }
}

/// The spine around a shaft by the newer standard.
pub fn spine(measures: &BenchMeasures) -> Option<SpineRound> {
    // The journal refuses any other word.
    let standard = measures.standard().ok()?;
    let reading = |reading: &SpineEntry| SpineReading {
        side: Index::from_degrees(reading.side_deg),
        sag: standard.convert(Millimetres::from_inches(reading.sag_in), SpineStandard::Span28),
    };
    SpineRound::of(&measures.spine.iter().map(reading).collect::<Vec<_>>())
}

fn front_of_centre(measures: &BenchMeasures) -> Option<f64> {
    let [length, balance] = [measures.length_mm?, measures.balance_mm?].map(Millimetres::new);
    front_of_centre_percent(length, balance).ok()
}
