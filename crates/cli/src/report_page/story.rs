//! The dozen in plain words.

use quarterturn_tuning::Advice;

use crate::opened::Opened;
use crate::screens;
use crate::wording::{Ruler, asides, tally, why};

/// What was shot and what came of it.
pub fn story(opened: &Opened, advice: &Advice) -> Vec<String> {
    let mut story = vec![screens::heading(opened), format!("So far: {}.", tally(&advice.shafts))];
    story.extend([screens::bow(advice, opened.ruler()), screens::archer(advice, opened.ruler())]);
    story
}

/// What is to be done next, and what gives pause.
pub fn now(advice: &Advice, ruler: Ruler) -> Vec<String> {
    let asides = asides(advice, ruler).map(|(lead, said)| lead.to_owned() + &said);
    [why(advice, ruler)].into_iter().chain(asides).collect()
}
