//! `checklist`: every stage from raw shaft to quiver, and what is still missing.

use crate::answer::Answer;
use crate::args::ChecklistArgs;
use crate::checklist::Checklist;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{clock, json, screens};

/// Shows where a journal stands; it is only read.
pub fn run(args: &ChecklistArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let checklist = Checklist::of(opened.journal.state(), &opened.advice(), clock::moment());
    let text = if args.json {
        json::checklist(&checklist)?
    } else {
        screens::checklist(&opened, &checklist)
    };
    Ok(Answer::new(text).noticing(opened.notices()))
}
