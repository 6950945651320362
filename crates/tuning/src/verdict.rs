//! The verdict on a shaft.

/// What to do with a shaft, and why.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Verdict {
    /// Fletch it at its index.
    Keep,
    /// Not decided.
    Open(OpenReason),
    /// Do not hunt with it.
    Retire(RetireReason),
}

/// Why a shaft is not decided.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OpenReason {
    /// Not shot yet.
    NotShot,
    /// About so many more shots at its index would decide it.
    MoreShots(usize),
    /// More shots than they are worth: about so many.
    NotWorthMore(usize),
    /// Not even fifty more shots at this distance would tell.
    CannotTell,
    /// No index brings it in as the bow stands, but a move of the bow would.
    BowOff,
    /// No fletched reference is left to measure it from.
    NoReference,
}

/// Why a shaft is retired.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RetireReason {
    /// What turns with the mark is so large that no index brings it in.
    CircleTooBig,
    /// Its centre lies so far from the others' that no index brings it in.
    CentreOff,
    /// It scatters more than the archer does.
    DoesNotRepeat,
    /// Laid aside by the archer.
    SetAside,
    /// Not found.
    Lost,
    /// Broken.
    Broken,
}
