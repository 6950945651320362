//! `redo`: brings back what was taken back last.

use crate::answer::Answer;
use crate::args::RedoArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{clock, json, screens};

/// Brings back the entry that was taken back last.
pub fn run(args: &RedoArgs) -> Result<Answer, Failure> {
    let mut opened = Opened::at(&args.journal)?;
    let confirmed = opened.journal.redo(&clock::stamp()?)?;
    let text =
        if args.json { json::recorded(&confirmed)? } else { screens::redone(&opened, &confirmed) };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}
