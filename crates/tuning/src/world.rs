//! What a simulated archer, his bow and his shafts are drawn from.

/// Standard deviations per axis and chances from which a [`SimulatedArcher`](crate::SimulatedArcher) is drawn.
///
/// Sizes are millimetres at the distance shot, leans are degrees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct World {
    /// The archer's own spread lies evenly between these two.
    pub spread_mm: [f64; 2],
    /// How much wider bare shots are than fletched ones.
    pub bare_wider: f64,
    /// The archer's aim from end to end.
    pub drift_mm: f64,
    /// The common offset of the bow.
    pub common_mm: f64,
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
    /// The lean that goes with a miss, degrees a millimetre, while the miss is small.
    pub lean_deg_per_mm: f64,
    /// The miss beyond which the lean grows no further and turns back.
    pub lean_bends_at_mm: f64,
    /// What the lean of each part differs from that relation.
    pub lean_discrepancy_deg: f64,
    /// The lean of a single shot about its mean, its reading included.
    pub lean_shot_deg: f64,
    /// The frame in which an end's leans are read.
    pub lean_frame_deg: f64,
    /// Reading a hit.
    pub read_mm: f64,
}

impl World {
    /// An ordinary hunter with a compound bow and a usual dozen at 18.3 m (sizes are common practice, from memory).
    pub const ORDINARY: Self = Self {
        spread_mm: [12.0, 26.0],
        bare_wider: 1.2,
        drift_mm: 8.0,
        common_mm: 8.5,
        centre_mm: 3.0,
        turning_mm: 10.0,
        stiff_mm: 7.0,
        against_share: 0.1,
        third_mm: 0.5,
        loose_share: 0.08,
        loose_wider: 2.5,
        crooked_share: 0.08,
        crooked_larger: 2.5,
        flyer_share: 0.04,
        lean_deg_per_mm: -0.1,
        lean_bends_at_mm: 60.0,
        lean_discrepancy_deg: 0.4,
        lean_shot_deg: 1.2,
        lean_frame_deg: 1.0,
        read_mm: 4.0,
    };
}
