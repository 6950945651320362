//! What became of a shaft, beside what is true of it.

use quarterturn_geometry::{Index, Millimetres, Offset, Positions};

use crate::{ShaftName, SimulatedArcher, Verdict};

/// A usable shaft has a position within this share of the tolerance...
const WELL_INSIDE: f64 = 0.75;

/// ... and one whose miss is beyond this share of it should not have been kept.
const CLEARLY_OUTSIDE: f64 = 1.25;

/// What became of a shaft, beside what is true of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Fate {
    /// Which shaft.
    pub shaft: ShaftName,
    /// What was settled.
    pub ruling: Ruling,
    /// The index it was judged at.
    pub index: Index,
    /// Its true miss there.
    pub miss: Offset,
    /// Whether it truly groups.
    pub groups: bool,
    /// Whether it groups and some hour of the clock puts it within three quarters of the tolerance.
    pub usable: bool,
    /// What was settled wrongly.
    pub mistake: Option<Mistake>,
}

/// What was settled of a shaft.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ruling {
    /// Fletch it.
    Keep,
    /// Nothing.
    Open,
    /// Do not hunt with it.
    Retire,
}

/// A ruling that should not have been.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mistake {
    /// Kept, though it does not group or misses by more than one and a quarter of the tolerance.
    WrongKeep,
    /// Retired, though it is usable.
    Lost,
}

impl From<Verdict> for Ruling {
    fn from(verdict: Verdict) -> Self {
        match verdict {
            Verdict::Keep => Self::Keep,
            Verdict::Open(_) => Self::Open,
            Verdict::Retire(_) => Self::Retire,
        }
    }
}

impl Fate {
    /// Holds `ruling` on a shaft at `index` against the truth; nothing where the archer has no such shaft.
    pub fn of(
        archer: &SimulatedArcher,
        tolerance: Millimetres,
        shaft: &ShaftName,
        (ruling, index): (Ruling, Index),
    ) -> Option<Self> {
        let miss = archer.true_miss(shaft, index)?;
        let groups = archer.groups(shaft);
        let well_inside = |index| {
            let miss = archer.true_miss(shaft, index);
            miss.is_some_and(|miss| miss.length() <= tolerance * WELL_INSIDE)
        };
        let usable = groups && Positions::HOURS.iter().any(well_inside);
        let bad = !groups || miss.length() > tolerance * CLEARLY_OUTSIDE;
        let mistake = match ruling {
            Ruling::Keep if bad => Some(Mistake::WrongKeep),
            Ruling::Retire if usable => Some(Mistake::Lost),
            _ => None,
        };
        Some(Self { shaft: shaft.clone(), ruling, index, miss, groups, usable, mistake })
    }
}
