//! What a session showed.

use std::collections::BTreeMap;

use quarterturn_tuning::{Hint, ShaftName};

use crate::mistake::{Mistake, Spoilt};

/// What a session showed.
#[derive(Default)]
pub struct Shown {
    /// Every hint that came at any time, once.
    pub hints: BTreeMap<String, Hint>,
    /// Advice to stop early.
    pub pauses: Vec<String>,
    /// What was spoilt.
    pub spoilt: Option<Spoilt>,
    /// How many evenings it took.
    pub evenings: usize,
}

impl Shown {
    /// Keeps the hints that did not come before.
    pub fn hear(&mut self, hints: Vec<Hint>) {
        for hint in hints {
            let key = format!("{:?} in end {:?}: {hint:?}", hint.shafts(), hint.end());
            self.hints.entry(key.chars().take(60).collect()).or_insert(hint);
        }
    }

    fn shafts(&self) -> &[ShaftName] {
        self.spoilt.as_ref().map_or(&[], |spoilt| &spoilt.shafts)
    }

    /// Whether a hint of the right kind came, of no other shaft.
    pub fn finds(&self, mistake: Mistake) -> bool {
        self.hints.values().any(|hint| {
            let kind = matches!(
                (mistake, hint),
                (Mistake::Exchange, Hint::Exchanged { .. })
                    | (Mistake::UpsideDown, Hint::UpsideDown { .. })
                    | (Mistake::Slip, Hint::Slipped { .. })
            );
            kind && hint.shafts().iter().all(|one| self.shafts().contains(one))
        })
    }

    /// Whether a hint of any kind came of a shaft that was spoilt.
    pub fn names(&self) -> bool {
        self.hints.values().any(|hint| hint.shafts().iter().any(|one| self.shafts().contains(one)))
    }

    /// Whether a hint came of another shaft.
    pub fn blames_another(&self) -> bool {
        let other = |hint: &Hint| !hint.shafts().iter().any(|one| self.shafts().contains(one));
        self.hints.values().any(other)
    }
}
