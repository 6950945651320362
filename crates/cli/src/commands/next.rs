//! `next`: what to do now.

use crate::answer::Answer;
use crate::args::NextArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{json, screens};

/// Says what to do now; the journal is only read.
pub fn run(args: &NextArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let advice = opened.advice();
    let text =
        if args.json { json::next(&opened, &advice)? } else { screens::next(&opened, &advice) };
    Ok(Answer::new(text).noticing(opened.notices()))
}
