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
