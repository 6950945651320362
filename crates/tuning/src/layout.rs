//! Where each unknown of the flight model stands in the vector of unknowns.

use crate::observation::{Kind, Observations};

/// Unknowns of a bare shaft: c, a, a′, b, b′ in millimetres, then what its lean differs in c, a and b, degrees.
pub const SHAFT: usize = 16;

/// Where each part of a shaft's unknowns begins.
pub mod shaft {
    /// Its own centre.
    pub const CENTRE: usize = 0;
    /// What turns once with the mark.
    pub const TURNING: usize = 2;
    /// What turns once against the mark.
    pub const TURNING_AGAINST: usize = 4;
    /// What turns twice with the mark.
    pub const STIFF: usize = 6;
    /// What turns twice against the mark.
    pub const STIFF_AGAINST: usize = 8;
    /// What the lean differs in the centre.
    pub const CENTRE_LEAN: usize = 10;
    /// What the lean differs in what turns once.
    pub const TURNING_LEAN: usize = 12;
    /// What the lean differs in what turns twice.
    pub const STIFF_LEAN: usize = 14;
}

/// The vector of unknowns: lives first, then what the set has in common, the bows, the sittings.
#[derive(Clone, Debug)]
pub struct Layout {
    lives: Vec<usize>,
    set: usize,
    bows: usize,
    sittings: usize,
    len: usize,
}

impl Layout {
    /// The layout for what was observed.
    pub fn of(seen: &Observations) -> Self {
        let mut next = 0;
        let mut take = |count: usize| {
            next += count;
            next - count
        };
        let lives = seen
            .lives
            .iter()
            .map(|life| match life.kind {
                Kind::Bare => take(SHAFT),
                Kind::Reference => take(4),
            })
            .collect();
        let set = take(4);
        let bows = take(4 * (seen.bow_changes_mm.len() + 1));
        let sittings = take(2 * seen.sittings);
        Self { lives, set, bows, sittings, len: next }
    }

    /// How many unknowns there are.
    pub fn len(&self) -> usize {
        self.len
    }

    /// Where the unknowns of a life begin: [`SHAFT`] for a bare shaft; hit and lean, two each, for a reference.
    pub fn life(&self, life: usize) -> usize {
        self.lives[life]
    }

    /// The mean over the set of what turns once, and two further of what turns twice.
    pub fn set(&self) -> usize {
        self.set
    }

    /// The common offset after so many changes of the bow, and two further the common lean.
    pub fn bow(&self, bow: usize) -> usize {
        self.bows + 4 * bow
    }

    /// Where references land on average in a sitting.
    pub fn sitting(&self, sitting: usize) -> usize {
        self.sittings + 2 * sitting
    }
}
