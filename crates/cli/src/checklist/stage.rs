//! One stage of the work.

use quarterturn_tuning::ShaftName;

use crate::wording::all;

/// A stage and how it stands.
pub struct Stage {
    /// The word for it, for other programs.
    pub word: &'static str,
    /// What is done.
    pub what: &'static str,
    pub stands: Stands,
    /// The shafts that lack it.
    pub missing: Vec<ShaftName>,
    /// How it stands, in a phrase; empty where there is nothing to say.
    pub said: String,
}

/// How a stage stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stands {
    /// Nothing is missing.
    Done,
    /// Something is.
    Missing,
    /// Something is, and the shafts were shot without it.
    Passed,
    /// Nothing is there yet to do it with.
    Later,
    /// No journal can know.
    ByHand,
}

impl Stands {
    /// The word for it.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Done => "done",
            Self::Missing => "missing",
            Self::Passed => "passed",
            Self::Later => "later",
            Self::ByHand => "by hand",
        }
    }
}

impl Stage {
    /// What no journal knows.
    pub fn by_hand(word: &'static str, what: &'static str, said: &str) -> Self {
        let said = said.to_owned();
        Self { word, what, stands: Stands::ByHand, missing: Vec::new(), said }
    }

    /// What is done once no shaft of `of` lacks it.
    pub fn lacking(
        word: &'static str,
        what: &'static str,
        missing: Vec<ShaftName>,
        of: usize,
    ) -> Self {
        let said = match missing.len() {
            0 => String::new(),
            n if n == of && n > 1 => format!("all {n}"),
            _ => all(&missing),
        };
        Self::saying(word, what, missing, said)
    }

    /// What waits for something else.
    pub fn later(word: &'static str, what: &'static str, said: &str) -> Self {
        let said = said.to_owned();
        Self { word, what, stands: Stands::Later, missing: Vec::new(), said }
    }

    /// The same in other words.
    pub fn saying(
        word: &'static str,
        what: &'static str,
        missing: Vec<ShaftName>,
        said: String,
    ) -> Self {
        let stands = if missing.is_empty() { Stands::Done } else { Stands::Missing };
        Self { word, what, stands, missing, said }
    }
}
