//! The worlds that the archer is played in: what is true there, in mm at 18.3 m and in degrees.

use std::ops::Range;

/// How far from the reference a shaft may land, mm.
pub const TOLERANCE_MM: f64 = 25.0;
/// Bare shafts in the journal.
pub const SHAFTS: usize = 12;
/// Bare shots scatter wider than fletched ones by this factor.
pub const BARE_WIDER: f64 = 1.2;
/// One shot in so many is a flyer, which scatters wider by the factor.
pub const FLYERS: f64 = 0.04;
pub const FLYER_WIDER: f64 = 3.0;
/// The share of shafts that do not group, and their factor on the spread.
pub const UNREPEATABLE: f64 = 0.08;
pub const UNREPEATABLE_WIDER: f64 = 2.5;
/// The share of shafts that are worse built, and their factor on every part.
pub const BADLY_BUILT: f64 = 0.08;
pub const BADLY_BUILT_WORSE: f64 = 2.5;
/// Standard deviations of a shaft's parts, per axis: what turns once and twice with the mark, what turns
/// against it, and what does not turn.
pub const ONCE_MM: f64 = 10.0;
pub const TWICE_MM: f64 = 7.0;
pub const ONCE_AGAINST_MM: f64 = 1.0;
pub const TWICE_AGAINST_MM: f64 = 0.7;
pub const CENTRE_MM: f64 = 3.0;
/// How an arrow leans for a miss, how much a shaft departs from that, and how shots and readings scatter.
pub const LEAN_DEG_PER_MM: f64 = -0.1;
pub const LEAN_OF_ITS_OWN_DEG: f64 = 0.4;
pub const LEAN_SCATTER_BARE_DEG: f64 = 1.0;
pub const LEAN_SCATTER_FLETCHED_DEG: f64 = 0.5;
pub const LEAN_READING_DEG: f64 = 0.7;
pub const LEAN_FRAME_DEG: f64 = 1.0;
/// A move of the bow does what was asked of it within this share.
pub const BOW_GAIN_SD: f64 = 0.2;

/// How far a move of the rest by one millimetre shifts bare shafts.
pub const SHIFT_PER_MM_OF_REST: f64 = 20.0;

/// One world.
#[derive(Clone)]
pub struct World {
    pub name: &'static str,
    /// The archer's own spread of fletched shots per axis, drawn once a session.
    pub spread_mm: Range<f64>,
    /// How far the archer's aim wanders from end to end, per axis.
    pub drift_mm: f64,
    /// A factor on the parts of every shaft.
    pub fault: f64,
    pub bow: Bow,
    pub lean: Lean,
    pub asked_to_move: Asked,
}

/// Where bare shafts as a whole land from the reference.
#[derive(Clone, Copy)]
pub enum Bow {
    /// Normal, with this standard deviation per axis.
    Near { sd_mm: f64 },
    /// So far off, in any direction.
    Off { mm: f64 },
}

/// How tails lean for a miss, and whether the archer reads them.
#[derive(Clone, Copy, PartialEq)]
pub enum Lean {
    NotRead,
    InProportion,
    /// Half the slope beyond 20 mm and none beyond 60 mm.
    BendsBack,
}

/// What the archer does when asked to move the bow: moved once, it stays for good.
#[derive(Clone, Copy, PartialEq)]
pub enum Asked {
    Moves,
    Leaves,
}

impl World {
    /// Every world, the ordinary one first.
    pub fn all() -> Vec<Self> {
        let ordinary = Self {
            name: "ordinary",
            spread_mm: 12.0..26.0,
            drift_mm: 8.0,
            fault: 1.0,
            bow: Bow::Near { sd_mm: 8.5 },
            lean: Lean::InProportion,
            asked_to_move: Asked::Moves,
        };
        let like = || ordinary.clone();
        let off = |asked_to_move, name| Self {
            name,
            bow: Bow::Off { mm: 60.0 },
            asked_to_move,
            ..like()
        };
        vec![
            like(),
            Self { name: "steady", spread_mm: 6.0..12.0, ..like() },
            Self { name: "shaky", spread_mm: 25.0..45.0, ..like() },
            Self { name: "lean not read", lean: Lean::NotRead, ..like() },
            Self { name: "lean bends back", lean: Lean::BendsBack, ..like() },
            Self { name: "good dozen", fault: 1.0 / 3.0, ..like() },
            off(Asked::Moves, "bow 60 mm off"),
            off(Asked::Leaves, "bow left"),
        ]
    }
}
