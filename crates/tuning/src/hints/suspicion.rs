//! A hint with what speaks for it.

use super::hint::Hint;

/// A hint is given only where it is so many times as likely as its absence.
const STRONG: f64 = 20.0;

/// A hint, how likely it is and which shots it explains.
#[derive(Clone, Debug)]
pub struct Suspicion {
    /// What is suspected.
    pub hint: Hint,
    /// ln of its odds against everything having been as it was entered.
    pub log_odds: f64,
    /// The shots it explains.
    pub shots: Vec<usize>,
}

impl Suspicion {
    /// Whether enough speaks for it.
    pub fn is_strong(&self) -> bool {
        self.log_odds >= STRONG.ln()
    }

    /// Whether both explain the same shot.
    pub fn overlaps(&self, other: &Self) -> bool {
        self.shots.iter().any(|shot| other.shots.contains(shot))
    }
}
