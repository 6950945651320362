//! What was settled when the journal was begun.

use quarterturn_geometry::{Index, Millimetres, Positions};

use crate::{Matching, ShaftName};

/// The dozen, its references and the conditions.
#[derive(Clone, Debug, PartialEq)]
pub struct Setup {
    /// The bare shafts, in the order they were named, each with where its mark stood at the beginning.
    pub shafts: Vec<(ShaftName, Index)>,
    /// The fletched arrows that are trusted.
    pub references: Vec<ShaftName>,
    /// From the archer to the face.
    pub distance: Millimetres,
    /// How far a shaft may land from what it is to match.
    pub tolerance: Millimetres,
    /// How many arrows are shot before walking up, references included.
    pub arrows_per_end: usize,
    /// Where the marks may be put.
    pub positions: Positions,
    /// What the shafts are to match.
    pub matching: Matching,
    /// What a bare shaft lacks in mass against the reference.
    pub bare_lighter: Option<MissingMass>,
}

impl Setup {
    /// The plainest case: shafts numbered from 1 with their marks at 12 o'clock, one reference R, 18.3 m, a tolerance of
    /// 25 mm, four arrows an end, any of the hours.
    pub fn beside_one_reference(shafts: usize) -> Self {
        let name = |name: &str| name.parse::<ShaftName>().ok();
        let shaft = |number: usize| Some((name(&number.to_string())?, Index::TWELVE));
        Self {
            shafts: (1..=shafts).filter_map(shaft).collect(),
            references: name("R").into_iter().collect(),
            distance: Millimetres::from_metres(18.3),
            tolerance: Millimetres::new(25.0),
            arrows_per_end: 4,
            positions: Positions::HOURS,
            matching: Matching::default(),
            bare_lighter: None,
        }
    }
}

/// The vanes' mass that a bare shaft lacks: it flies faster and lands higher, known and not fitted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MissingMass {
    /// What is lacking, grains.
    pub lighter_gr: f64,
    /// The mass of the fletched arrow, grains.
    pub arrow_gr: f64,
    /// The speed of the fletched arrow, m/s.
    pub speed_m_s: f64,
}
