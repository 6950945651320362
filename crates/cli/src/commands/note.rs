//! `note`: keeps a note.

use quarterturn_journal::{Entry, NoteEntry};

use crate::answer::Answer;
use crate::args::NoteArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{json, screens};

/// Records a note.
pub fn run(args: &NoteArgs) -> Result<Answer, Failure> {
    let mut opened = Opened::at(&args.journal)?;
    let confirmed = opened.append(Entry::Note(NoteEntry { note: args.text.clone() }))?;
    let text =
        if args.json { json::recorded(&confirmed)? } else { screens::recorded_note(&opened) };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}
