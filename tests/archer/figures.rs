//! What many sessions in one world came to.

use super::calibration::Calibration;
use super::fate::Fate;
use super::mean::Mean;
use super::next::Verdict;
use super::session::Session;
use super::share::Share;
use super::world::{SHAFTS, TOLERANCE_MM};

/// The bow is asked for early when it is asked for within so many bare shots.
const EARLY_BARE_SHOTS: usize = 12;

/// The figures of one world.
pub struct Figures {
    pub world: &'static str,
    pub sessions: usize,
    /// All shots, those of the reference too, for one shaft.
    pub shots_per_shaft: Mean,
    /// Keeps that should not have been, out of all keeps.
    pub wrong: Share,
    /// Usable shafts that were retired, out of all usable ones.
    pub lost: Share,
    /// Shafts left open at the end, out of all.
    pub open: Share,
    /// Sessions in which the bow was asked for: at all, early, and with bare shafts in truth near enough.
    pub bow: Share,
    pub bow_early: Share,
    pub bow_false: Share,
    pub ends: Mean,
    pub turns_per_shaft: Mean,
    pub unfinished: Share,
    pub said: Calibration,
    pub said_last: Calibration,
}

impl Figures {
    pub fn of(world: &'static str, sessions: &[Session]) -> Self {
        let fates = || sessions.iter().flat_map(|session| &session.fates);
        let mean = |value: fn(&Session) -> usize, per: usize| -> Mean {
            sessions.iter().map(|session| value(session) as f64 / per as f64).collect()
        };
        let share = |holds: fn(&Session) -> bool| -> Share { sessions.iter().map(holds).collect() };
        let joined = |part: fn(&Session) -> &Calibration| {
            sessions.iter().map(part).fold(Calibration::default(), |sum, one| sum.join(one))
        };
        Self {
            world,
            sessions: sessions.len(),
            shots_per_shaft: mean(|session| session.shots, SHAFTS),
            wrong: fates()
                .filter(|fate| fate.verdict == Verdict::Keep)
                .map(Fate::is_wrong_keep)
                .collect(),
            lost: fates().filter(|fate| fate.usable).map(Fate::is_lost).collect(),
            open: fates().map(|fate| fate.verdict == Verdict::Open).collect(),
            bow: share(|session| session.first_bow.is_some()),
            bow_early: share(|session| {
                session.first_bow.is_some_and(|bow| bow.after_bare_shots <= EARLY_BARE_SHOTS)
            }),
            bow_false: share(|session| {
                session.first_bow.is_some_and(|bow| bow.true_offset.length() < TOLERANCE_MM / 2.0)
            }),
            ends: mean(|session| session.ends, 1),
            turns_per_shaft: mean(|session| session.turns, SHAFTS),
            unfinished: share(|session| !session.finished),
            said: joined(|session| &session.said),
            said_last: joined(|session| &session.said_last),
        }
    }
}
