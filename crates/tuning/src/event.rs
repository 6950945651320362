//! What can happen after the journal was begun.

use quarterturn_geometry::{Index, Offset};

use crate::{End, ShaftName};

/// One thing that happened, in the order in which it was recorded.
#[derive(Clone, Debug, PartialEq)]
pub enum Event {
    /// An end was shot.
    End(End),
    /// The bow was changed.
    Bow(BowChange),
    /// The bow stays as it is.
    BowLeft,
    /// A shaft or a reference changed its state.
    Shaft(ShaftName, ShaftChange),
    /// A shaft was fletched, with its mark there on the string from now on.
    Fletched(ShaftName, Index),
}

/// A change of the bow.
#[derive(Clone, Debug, PartialEq)]
pub struct BowChange {
    /// Which part.
    pub part: BowPart,
    /// By how much, where it was measured.
    pub moved: Option<Offset>,
}

/// The part of the bow that was changed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum BowPart {
    /// The arrow rest.
    Rest,
    /// The nocking point.
    NockingPoint,
    /// A cam or its timing.
    Cam,
    /// The sight: it moves bare and fletched alike.
    Sight,
    /// The string or its serving.
    String,
    /// Anything else.
    #[default]
    Other,
}

/// What became of a shaft.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ShaftChange {
    /// It was not found.
    Lost,
    /// It broke, or was found damaged.
    Broken,
    /// It was mended (or replaced under the same name): it starts anew.
    Repaired,
    /// The archer laid it aside.
    SetAside,
    /// The archer took it up again.
    Readmit,
    /// It was fletched: no longer bare.
    Fletched,
    /// It was flexed, spun and looked at, and is sound.
    Checked,
    /// It hit something hard.
    HardHit,
    /// It has a new nock.
    NewNock,
}
