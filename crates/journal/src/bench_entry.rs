//! What was measured of a shaft in the workshop, as it is written in the journal.

use quarterturn_bench::SpineStandard;
use quarterturn_tuning::{Setup, ShaftName};
use serde::{Deserialize, Serialize};

use crate::limit::Limit;
use crate::names::known;
use crate::shot_entry::without_turns;
use crate::{Fault, What, Word};

/// Some measures of one shaft or reference; checked when it is appended.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct BenchEntry {
    /// Its name.
    pub shaft: String,
    /// What was measured.
    #[serde(flatten)]
    pub measures: BenchMeasures,
}

/// What can be measured of one shaft; left out: not measured. Sides are read clockwise from the ink mark, as seen from
/// the nock.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct BenchMeasures {
    /// Mass of the raw shaft, grains.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub mass_gr: Option<f64>,
    /// From the groove of the nock to the end of the shaft, point left out, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub length_mm: Option<f64>,
    /// Straightness in the middle, as the whole swing of the gauge in one turn, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub straightness_mm: Option<f64>,
    /// The same over the last 40 mm at the point, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub straightness_point_mm: Option<f64>,
    /// The same over the last 40 mm at the nock, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub straightness_nock_mm: Option<f64>,
    /// Toward which side the crooked end stands off, degrees.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub crooked_side_deg: Option<f64>,
    /// How much was cut off at the end for the point, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cut_point_mm: Option<f64>,
    /// How much was cut off at the end for the nock, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cut_nock_mm: Option<f64>,
    /// Spine readings around the shaft.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub spine: Vec<SpineEntry>,
    /// The word of the [`SpineStandard`] they were read by; left out: 28 in and 1.94 lb.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub spine_standard: Option<String>,
    /// The stiff side, degrees.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub stiff_side_deg: Option<f64>,
    /// The heavy side, degrees.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub heavy_side_deg: Option<f64>,
    /// How far the end for the insert is out of square, across its diameter, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub square_runout_mm: Option<f64>,
    /// Wobble at the tip of a point, as the whole swing of the gauge in one turn, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub wobble_mm: Option<f64>,
    /// Mass of the bare arrow as it is shot, with insert, point and nock, grains.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub bare_mass_gr: Option<f64>,
    /// Mass of the finished arrow, grains.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub finished_mass_gr: Option<f64>,
    /// From the groove of the nock to the balance point of the finished arrow, mm.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub balance_mm: Option<f64>,
}

/// How far a shaft sagged with one side up.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct SpineEntry {
    /// The side, degrees.
    pub side_deg: f64,
    /// How far it sagged, in.
    pub sag_in: f64,
}

impl BenchEntry {
    /// Writes out by which standard the spine was read, and takes whole turns off.
    pub(crate) fn make_explicit(&mut self) {
        let measures = &mut self.measures;
        if !measures.spine.is_empty() {
            let standard = || SpineStandard::default().word().to_owned();
            measures.spine_standard.get_or_insert_with(standard);
        }
        let sides = [
            &mut measures.stiff_side_deg,
            &mut measures.heavy_side_deg,
            &mut measures.crooked_side_deg,
        ];
        let read = measures.spine.iter_mut().map(|reading| &mut reading.side_deg);
        sides.into_iter().flatten().chain(read).for_each(|side| *side = without_turns(*side));
    }

    /// Whose measures they are, in a journal that has `setup`.
    pub(crate) fn shaft(&self, setup: &Setup) -> Result<ShaftName, Fault> {
        self.measures.can_be()?;
        known(setup, &self.shaft).map_err(|what| Fault::at("shaft", what))
    }
}

impl BenchMeasures {
    /// These, and of `earlier` what is not among them.
    pub(crate) fn over(self, earlier: Self) -> Self {
        let (spine, spine_standard) = if self.spine.is_empty() {
            (earlier.spine, earlier.spine_standard)
        } else {
            (self.spine, self.spine_standard)
        };
        Self {
            mass_gr: self.mass_gr.or(earlier.mass_gr),
            length_mm: self.length_mm.or(earlier.length_mm),
            straightness_mm: self.straightness_mm.or(earlier.straightness_mm),
            straightness_point_mm: self.straightness_point_mm.or(earlier.straightness_point_mm),
            straightness_nock_mm: self.straightness_nock_mm.or(earlier.straightness_nock_mm),
            crooked_side_deg: self.crooked_side_deg.or(earlier.crooked_side_deg),
            cut_point_mm: self.cut_point_mm.or(earlier.cut_point_mm),
            cut_nock_mm: self.cut_nock_mm.or(earlier.cut_nock_mm),
            spine,
            spine_standard,
            stiff_side_deg: self.stiff_side_deg.or(earlier.stiff_side_deg),
            heavy_side_deg: self.heavy_side_deg.or(earlier.heavy_side_deg),
            square_runout_mm: self.square_runout_mm.or(earlier.square_runout_mm),
            wobble_mm: self.wobble_mm.or(earlier.wobble_mm),
            bare_mass_gr: self.bare_mass_gr.or(earlier.bare_mass_gr),
            finished_mass_gr: self.finished_mass_gr.or(earlier.finished_mass_gr),
            balance_mm: self.balance_mm.or(earlier.balance_mm),
        }
    }

    /// The standard that the spine was read by.
    ///
    /// # Errors
    /// [`What::UnknownWord`] for another word.
    pub fn standard(&self) -> Result<SpineStandard, What> {
        let word = self.spine_standard.as_deref().map(SpineStandard::from_word);
        word.transpose().map(Option::unwrap_or_default)
    }

    /// That every measure lies within its limits, and that there is one.
    fn can_be(&self) -> Result<(), Fault> {
        if *self == Self::default() {
            return Err(Fault::whole(What::NothingMeasured));
        }
        for (name, value, limit) in self.above_zero() {
            at(name, value.map(|value| limit.above_zero(value)))?;
        }
        for (name, value, limit) in self.not_negative() {
            at(name, value.map(|value| limit.not_negative(value)))?;
        }
        for (name, value) in self.sides() {
            at(name, value.map(|value| Limit::INDEX.either_way(value)))?;
        }
        self.standard().map_err(|what| Fault::at("spine_standard", what))?;
        self.spine.iter().enumerate().try_for_each(|(n, reading)| reading.can_be(n))
    }

    fn above_zero(&self) -> [(&'static str, Option<f64>, Limit); 5] {
        [
            ("mass_gr", self.mass_gr, Limit::MASS),
            ("bare_mass_gr", self.bare_mass_gr, Limit::MASS),
            ("finished_mass_gr", self.finished_mass_gr, Limit::MASS),
            ("length_mm", self.length_mm, Limit::ARROW),
            ("balance_mm", self.balance_mm, Limit::ARROW),
        ]
    }

    fn not_negative(&self) -> [(&'static str, Option<f64>, Limit); 7] {
        [
            ("straightness_mm", self.straightness_mm, Limit::CROOKED),
            ("straightness_point_mm", self.straightness_point_mm, Limit::CROOKED),
            ("straightness_nock_mm", self.straightness_nock_mm, Limit::CROOKED),
            ("square_runout_mm", self.square_runout_mm, Limit::CROOKED),
            ("wobble_mm", self.wobble_mm, Limit::CROOKED),
            ("cut_point_mm", self.cut_point_mm, Limit::ARROW),
            ("cut_nock_mm", self.cut_nock_mm, Limit::ARROW),
        ]
    }

    fn sides(&self) -> [(&'static str, Option<f64>); 3] {
        [
            ("stiff_side_deg", self.stiff_side_deg),
            ("heavy_side_deg", self.heavy_side_deg),
            ("crooked_side_deg", self.crooked_side_deg),
        ]
    }

    /// That the arrow balances on its shaft.
    pub(crate) fn balances(&self) -> Result<(), Fault> {
        match (self.balance_mm, self.length_mm) {
            (Some(balance_mm), Some(length_mm)) if balance_mm >= length_mm => {
                Err(Fault::at("balance_mm", What::OffTheShaft { balance_mm, length_mm }))
            }
            _ => Ok(()),
        }
    }
}

impl SpineEntry {
    fn can_be(&self, n: usize) -> Result<(), Fault> {
        let side = Limit::INDEX.either_way(self.side_deg);
        let side = side.map_err(|what| Fault::at("side_deg", what));
        let sag = Limit::SAG.above_zero(self.sag_in).map_err(|what| Fault::at("sag_in", what));
        side.and(sag).map(|_| ()).map_err(|fault| fault.under("spine", n))
    }
}

fn at(name: &'static str, checked: Option<Result<f64, What>>) -> Result<(), Fault> {
    checked.transpose().map(|_| ()).map_err(|what| Fault::at(name, what))
}
