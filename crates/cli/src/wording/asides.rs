//! What is said beside the advice: a pause, and hints.

use quarterturn_tuning::Advice;

use super::{Ruler, hint, pause};

/// Each with the word that leads it: "Pause: " or "Hint: ".
pub fn asides(advice: &Advice, ruler: Ruler) -> impl Iterator<Item = (&'static str, String)> {
    let paused = advice.pause.map(|one| ("Pause: ", format!("{}.", pause(one, ruler))));
    paused.into_iter().chain(advice.hints.iter().map(|one| ("Hint: ", hint(one))))
}
