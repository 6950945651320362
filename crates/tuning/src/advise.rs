//! From a history to advice.

use crate::{Advice, History, Policy};

/// Reads a history and says what to do now; asked twice it says the same.
pub fn advise(history: &History, policy: &Policy) -> Advice {
    todo!("{history:?} {policy:?}")
}
