//! `next`: what to do now.

use quarterturn_tuning::Step;

use crate::answer::Answer;
use crate::args::NextArgs;
use crate::curing::still_curing;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{clock, json, screens};

/// Says what to do now; the journal is only read.
pub fn run(args: &NextArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let advice = opened.advice();
    let text =
        if args.json { json::next(&opened, &advice)? } else { screens::next(&opened, &advice) };
    let planned = match &advice.step {
        Step::Shoot(shots) => shots.as_slice(),
        _ => &[],
    };
    let (state, now) = (opened.journal.state(), clock::moment());
    let curing = planned.iter().filter_map(|shot| still_curing(state, &shot.shaft, now));
    Ok(Answer::new(text).noticing(opened.notices()).noticing(curing))
}
