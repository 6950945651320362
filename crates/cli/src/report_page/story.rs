//! The dozen in plain words.

use quarterturn_tuning::Advice;

use crate::opened::Opened;
use crate::screens;
use crate::wording::{self, Ruler, tally};

/// What was shot and what came of it.
pub fn story(opened: &Opened, advice: &Advice) -> Vec<String> {
    let mut story = vec![screens::heading(opened), format!("So far: {}.", tally(&advice.shafts))];
    story.extend([screens::bow(advice, opened.ruler()), screens::archer(advice, opened.ruler())]);
    story
}

/// What is to be done next, and what gives pause.
pub fn now(advice: &Advice, ruler: Ruler) -> Vec<String> {
    let pause = advice.pause.map(|pause| format!("Pause: {}.", wording::pause(pause, ruler)));
    let hints = advice.hints.iter().map(|hint| format!("Hint: {}", wording::hint(hint)));
    [wording::why(advice, ruler)].into_iter().chain(pause).chain(hints).collect()
}
