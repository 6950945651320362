//! The worlds that are played most, at 18.3 m: sizes are common practice, from memory.

use crate::{Leans, World};

impl World {
    /// An ordinary hunter with a compound bow and a usual dozen.
    pub const ORDINARY: Self = Self {
        spread_mm: [12.0, 26.0],
        taller: 1.0,
        bare_wider: 1.2,
        torque_share: 0.15,
        drift_mm: 8.0,
        wander_mm: 1.5,
        common_mm: 8.5,
        bow_off_mm: 0.0,
        uneven_share: 0.06,
        centre_mm: 3.0,
        turning_mm: 10.0,
        stiff_mm: 7.0,
        against_share: 0.1,
        third_mm: 0.5,
        seating_deg: 3.0,
        loose_share: 0.08,
        loose_wider: 2.5,
        crooked_share: 0.08,
        crooked_larger: 2.5,
        flyer_share: 0.04,
        leans: Leans::Read,
        lean_deg_per_mm: -0.1,
        lean_bends_at_mm: 60.0,
        lean_discrepancy_deg: 0.4,
        lean_shot_deg: 1.2,
        lean_frame_deg: 1.0,
        read_mm: 4.0,
    };

    /// An archer who shoots half as wide as most.
    pub const STEADY: Self = Self { spread_mm: [6.0, 12.0], ..Self::ORDINARY };

    /// An archer who shoots twice as wide as most.
    pub const SHAKY: Self = Self { spread_mm: [25.0, 45.0], ..Self::ORDINARY };

    /// An archer who holds his line better than his height.
    pub const TALL: Self = Self { taller: 2.0, ..Self::ORDINARY };

    /// An archer who does not look how his arrows stand.
    pub const LEAN_NOT_READ: Self = Self { leans: Leans::NotRead, ..Self::ORDINARY };

    /// A lean that says less of a larger miss, and turns back beyond 30 mm.
    pub const LEAN_BENDS: Self = Self { lean_bends_at_mm: 30.0, ..Self::ORDINARY };

    /// Shafts with a third of the usual faults.
    pub const GOOD_DOZEN: Self = Self {
        centre_mm: Self::ORDINARY.centre_mm / 3.0,
        turning_mm: Self::ORDINARY.turning_mm / 3.0,
        stiff_mm: Self::ORDINARY.stiff_mm / 3.0,
        third_mm: Self::ORDINARY.third_mm / 3.0,
        ..Self::ORDINARY
    };

    /// A bow that throws bare shafts 60 mm aside.
    pub const BOW_OFF: Self = Self { common_mm: 0.0, bow_off_mm: 60.0, ..Self::ORDINARY };
}
