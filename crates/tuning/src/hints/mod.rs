//! What a journal makes one suspect: exchanged numbers, turned nocks, leans that contradict hits.
//!
//! Hints only: nothing that is estimated changes for them.

mod exchanged;
mod hint;
mod journal_ends;
mod lean_contradicts;
mod left_out;
mod suspicion;
mod turned;

use self::exchanged::exchanged;
pub use self::hint::Hint;
use self::journal_ends::journal_ends;
use self::lean_contradicts::lean_contradicts;
pub use self::left_out::LeftOut;
use self::suspicion::Suspicion;
use self::turned::turned;
use crate::History;
use crate::evidence::Evidence;
use crate::observation::{Kind, Observations};

/// Only so many of the last ends are looked at, and of them those of so many of the last shots: what happened earlier
/// nobody remembers.
const RECENT: (usize, usize) = (6, 24);

/// Of an end only so many of the bare shots that are farthest from what is expected are held against each other.
const ODD_SHOTS: usize = 4;

/// Everything that should be looked at, what is surest first.
///
/// # Method
/// For each suspicion the likelihood of the shots it explains, given all other shots and with them as suspected, is
/// held against their likelihood as they were entered, times how often such a thing happens. It is reported from
/// odds of 20 to 1 on, and of several that explain the same shot only the surest.
pub fn hints(history: &History, evidence: &Evidence<'_>) -> Vec<Hint> {
    let seen = evidence.seen;
    let Some(last) = seen.shots.last() else { return Vec::new() };
    let (ends, shots) = RECENT;
    let of_shots = seen.shots[seen.shots.len().saturating_sub(shots)].end;
    let recent = last.end.saturating_sub(ends - 1).max(of_shots);
    let mut strong = suspicions(evidence, &journal_ends(history), recent);
    strong.sort_by(|one, other| other.log_odds.total_cmp(&one.log_odds));
    let mut kept: Vec<Suspicion> = Vec::new();
    for suspicion in strong {
        if !kept.iter().any(|surer| surer.overlaps(&suspicion)) {
            kept.push(suspicion);
        }
    }
    let of_leans = shots_of_shafts(seen)
        .filter(|shots| shots.last().is_some_and(|&shot| seen.shots[shot].end >= recent))
        .filter_map(|shots| lean_contradicts(evidence, &shots));
    let of_leans: Vec<_> = of_leans.collect();
    kept.into_iter().map(|suspicion| suspicion.hint).chain(of_leans).collect()
}

fn suspicions(evidence: &Evidence<'_>, ends: &[usize], recent: usize) -> Vec<Suspicion> {
    let seen = evidence.seen;
    let mut all = Vec::new();
    let first = seen.shots.partition_point(|shot| shot.end < recent);
    let shots: Vec<usize> = (first..seen.shots.len()).collect();
    for end in shots.chunk_by(|&one, &next| seen.shots[one].end == seen.shots[next].end) {
        let mut bare: Vec<_> = end.iter().copied().filter(|&shot| is_bare(seen, shot)).collect();
        let off = |shot: &usize| evidence.scatter(*shot).square;
        bare.sort_by(|one, other| off(other).total_cmp(&off(one)));
        bare.truncate(ODD_SHOTS);
        bare.sort_unstable();
        all.extend(exchanged(evidence, &bare, ends[seen.shots[end[0]].end]));
    }
    for of_shaft in shots_of_shafts(seen) {
        all.extend(turned(evidence, &of_shaft, first, |shot| ends[seen.shots[shot].end]));
    }
    all.retain(Suspicion::is_strong);
    all
}

/// The shots of each bare shaft's present life, in order.
fn shots_of_shafts(seen: &Observations) -> impl Iterator<Item = Vec<usize>> {
    let lives = (0..seen.lives.len()).filter(|&life| seen.lives[life].kind == Kind::Bare);
    lives.map(|life| (0..seen.shots.len()).filter(|&at| seen.shots[at].life == life).collect())
}

fn is_bare(seen: &Observations, shot: usize) -> bool {
    seen.kind_of(&seen.shots[shot]) == Kind::Bare
}
