//! What a simulated archer, his bow and his shafts are drawn from.

use quarterturn_geometry::Millimetres;

/// The distance at which worlds are stated.
const STATED_AT: Millimetres = Millimetres::new(18_300.0);

/// Standard deviations per axis and chances from which a [`SimulatedArcher`](crate::SimulatedArcher) is drawn.
///
/// Sizes are millimetres at the distance shot, leans are degrees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct World {
    /// The archer's own spread lies evenly between these two.
    pub spread_mm: [f64; 2],
    /// How many times wider he spreads up and down than to the sides; the spread is the geometric mean of the two.
    pub taller: f64,
    /// How much wider bare shots are than fletched ones.
    pub bare_wider: f64,
    /// The share of the spread to the sides that is torque of the hand: it moves hit and lean together.
    pub torque_share: f64,
    /// The archer's aim from end to end.
    pub drift_mm: f64,
    /// How far his aim walks off from one end to the next, until the evening is over.
    pub wander_mm: f64,
    /// The common offset of the bow.
    pub common_mm: f64,
    /// How far off the bow is beside that, in any direction.
    pub bow_off_mm: f64,
    /// How unevenly the bow answers in its two directions, as a share: a matrix that stretches one and shrinks the other.
    pub uneven_share: f64,
    /// A shaft's own centre.
    pub centre_mm: f64,
    /// What turns once with the mark.
    pub turning_mm: f64,
    /// What turns twice with the mark.
    pub stiff_mm: f64,
    /// What turns against the mark, as a share of what turns with it.
    pub against_share: f64,
    /// What turns three times: the model does not know it.
    pub third_mm: f64,
    /// How far from where it was put a nock seats itself.
    pub seating_deg: f64,
    /// The share of shafts that do not group, scattering [`Self::loose_wider`] times as much.
    pub loose_share: f64,
    /// How many times wider a shaft scatters that does not group.
    pub loose_wider: f64,
    /// The share of shafts with [`Self::crooked_larger`] times the fault.
    pub crooked_share: f64,
    /// How many times larger the fault of such a shaft is.
    pub crooked_larger: f64,
    /// The share of shots that fly three times as wide.
    pub flyer_share: f64,
    /// Whether the archer reads leans.
    pub leans: Leans,
    /// The lean that goes with a miss, degrees a millimetre, while the miss is small.
    pub lean_deg_per_mm: f64,
    /// The miss beyond which the lean grows no further and turns back.
    pub lean_bends_at_mm: f64,
    /// What the lean of each part differs from that relation.
    pub lean_discrepancy_deg: f64,
    /// The lean of a single shot about its mean, its reading included and torque left out.
    pub lean_shot_deg: f64,
    /// The frame in which an end's leans are read.
    pub lean_frame_deg: f64,
    /// Reading a hit.
    pub read_mm: f64,
}

/// Whether an archer reads how his arrows lean.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leans {
    /// He does, with every shot.
    Read,
    /// He does not.
    NotRead,
}

impl World {
    /// The same world, stated for 18.3 m, from `distance`: what flies off at an angle grows with it, and reading does not.
    #[must_use]
    pub fn at(self, distance: Millimetres) -> Self {
        let farther = distance / STATED_AT;
        Self {
            spread_mm: self.spread_mm.map(|mm| mm * farther),
            drift_mm: self.drift_mm * farther,
            wander_mm: self.wander_mm * farther,
            common_mm: self.common_mm * farther,
            bow_off_mm: self.bow_off_mm * farther,
            centre_mm: self.centre_mm * farther,
            turning_mm: self.turning_mm * farther,
            stiff_mm: self.stiff_mm * farther,
            third_mm: self.third_mm * farther,
            lean_deg_per_mm: self.lean_deg_per_mm / farther,
            lean_bends_at_mm: self.lean_bends_at_mm * farther,
            ..self
        }
    }
}
