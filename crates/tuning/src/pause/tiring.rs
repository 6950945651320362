//! An archer who tires.

use quarterturn_statistics::distributions::FisherF;

use crate::Pause;
use crate::evidence::{Evidence, Scatter};

/// So many shots are compared at either end of the evening.
const DOZEN: usize = 12;

/// The last must spread so many times as widely as the first (common practice, from memory)...
const WIDER: f64 = 1.3;

/// ... and that must be met by chance no oftener than this: it is asked after every end.
const BY_CHANCE: f64 = 0.01;

/// Whether the last dozen counted shots of an evening spread clearly wider than its first dozen.
///
/// # Formula
/// For each dozen V = Σ w d² / Σ (1 − w S): d what a hit differs from what is expected of it, w the precision with which
/// it counts, S the variance of what is expected. V(last) / V(first) is held against Fisher's F.
pub fn tiring(evidence: &Evidence<'_>, shots: &[usize]) -> Option<Pause> {
    if shots.len() < 2 * DOZEN {
        return None;
    }
    let [first, last] = [&shots[..DOZEN], &shots[shots.len() - DOZEN..]].map(|dozen| {
        dozen.iter().fold(Scatter::default(), |sum, &shot| sum.and(evidence.scatter(shot)))
    });
    let ratio = last.mean() / first.mean();
    let f = FisherF::new(last.degrees_of_freedom, first.degrees_of_freedom).ok()?;
    let tires = ratio.sqrt() >= WIDER && f.upper_tail(ratio) < BY_CHANCE;
    tires.then(|| Pause::Tiring { wider: ratio.sqrt(), first: DOZEN, last: DOZEN })
}

impl Scatter {
    fn and(self, other: Self) -> Self {
        Self {
            square: self.square + other.square,
            degrees_of_freedom: self.degrees_of_freedom + other.degrees_of_freedom,
        }
    }

    fn mean(self) -> f64 {
        self.square / self.degrees_of_freedom
    }
}
