//! `undo`: takes back the last entry.

use crate::answer::Answer;
use crate::args::UndoArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{clock, json, screens};

/// Takes back the last entry that stands.
pub fn run(args: &UndoArgs) -> Result<Answer, Failure> {
    let mut opened = Opened::at(&args.journal)?;
    let confirmed = opened.journal.undo(&clock::stamp()?)?;
    let text =
        if args.json { json::recorded(&confirmed)? } else { screens::undone(&opened, &confirmed) };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}
