//! What the rehearsal of one case came to.

use quarterturn_tuning::{Figures, Outcome, Protocol};

use super::{Alternative, Conditions, Range, alternatives};
use crate::in_parallel::in_parallel;
use crate::progress::Progress;

/// Seeds of one rehearsal are apart from those of the next by more than the dozens of any.
const SEEDS_APART: u64 = 1_000_000;

/// What one case came to.
#[derive(Clone, Debug)]
pub struct Found {
    /// Which case.
    pub what: Alternative,
    /// What was rehearsed.
    pub conditions: Conditions,
    /// Shots, those of the reference too.
    pub shots: Range,
    /// Walks to the butt.
    pub ends: Range,
    /// Evenings, each as long as a policy bears.
    pub evenings: Range,
    /// Shares of shafts.
    pub figures: Figures,
}

/// Plays `dozens` invented dozens of every alternative by the program's own advice, the same shafts in each.
pub fn rehearse(asked: Conditions, dozens: usize, seed: u32, progress: &Progress) -> Vec<Found> {
    let cases = alternatives(asked);
    let play = |place: usize| {
        let (_, conditions) = &cases[place / dozens];
        let seed = u64::from(seed) * SEEDS_APART + (place % dozens) as u64;
        Protocol::Program.play(&conditions.setup(), conditions.world(), seed)
    };
    let all = cases.len() * dozens;
    let outcomes = in_parallel(all, play, |done| progress.tell(done, all));
    progress.end();
    cases
        .iter()
        .zip(outcomes.chunks(dozens))
        .map(|(case, dozens)| Found::of(*case, dozens))
        .collect()
}

impl Found {
    fn of((what, conditions): (Alternative, Conditions), dozens: &[Outcome]) -> Self {
        Self {
            what,
            conditions,
            shots: Range::of(dozens.iter().map(|one| one.shots)),
            ends: Range::of(dozens.iter().map(|one| one.ends)),
            evenings: Range::of(dozens.iter().map(|one| one.evenings)),
            figures: Figures::of(dozens, conditions.tolerance),
        }
    }
}
