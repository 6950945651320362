//! `log`: what was entered, changed and taken back.

use quarterturn_journal::Log;

use crate::answer::Answer;
use crate::args::LogArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{json, screens};

/// Shows every record; the journal is only read.
pub fn run(args: &LogArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let log = Log::of(opened.journal.records()?);
    let text = if args.json { json::log(&log)? } else { screens::log(&opened, &log) };
    Ok(Answer::new(text).noticing(opened.notices()))
}
