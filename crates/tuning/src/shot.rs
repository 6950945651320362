//! One shot as it was shot, seen and read.

use quarterturn_geometry::{Angle, Index, Lean, Millimetres, Point};

use crate::ShaftName;

/// One shot of one shaft.
#[derive(Clone, Debug, PartialEq)]
pub struct Shot {
    /// Which shaft or reference.
    pub shaft: ShaftName,
    /// Where its mark stood.
    pub index: Index,
    /// Where it hit and how it leaned; nothing where it could not be read.
    pub hit: Option<Hit>,
    /// What the archer said before walking up.
    pub call: Option<Call>,
    /// What else was noticed.
    pub flags: Vec<Flag>,
}

/// What was read at the butt.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hit {
    /// Where it hit, from the spot that this shot was aimed at.
    pub at: Point,
    /// How its tail leaned, in the frame used for the whole end. Unknown is not zero.
    pub lean: Option<Lean>,
    /// Standard deviation of reading the hit, per axis, where stated.
    pub read_sd: Option<Millimetres>,
    /// Standard deviation of reading the lean, per axis, where stated.
    pub lean_sd: Option<Angle>,
}

/// What the archer said of the shot before he saw where it went.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Call {
    /// It left as it should.
    Good,
    /// It did not: kept and counted, and left out of the estimates.
    Poor,
}

/// What was noticed about a shot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Flag {
    /// The arrow was not found.
    Lost,
    /// The arrow broke.
    Broken,
    /// A gust while it flew.
    Wind,
    /// It touched the rest, a cable or the bow.
    Contact,
    /// The nock was found turned afterwards.
    NockMoved,
    /// The reading may be wrong.
    Doubtful,
}

impl Shot {
    /// Whether the shot was noted with `flag`.
    pub fn has(&self, flag: Flag) -> bool {
        self.flags.contains(&flag)
    }

    /// Whether the shot says something about its shaft: called poor, in a gust, with contact, with a nock
    /// that moved or an arrow that broke, it is kept and counted but left out of the estimates.
    pub fn counts(&self) -> bool {
        let spoilt = [Flag::Wind, Flag::Contact, Flag::NockMoved, Flag::Broken];
        self.hit.is_some()
            && self.call != Some(Call::Poor)
            && !spoilt.into_iter().any(|flag| self.has(flag))
    }
}
