//! `check`: whether a journal is whole.

use quarterturn_journal::{Checked, JournalError, Repair};

use crate::answer::Answer;
use crate::args::CheckArgs;
use crate::failure::Failure;
use crate::{clock, json, screens};

/// Reads every byte of the journal, and changes none.
pub fn run(args: &CheckArgs) -> Result<Answer, Failure> {
    match Checked::of(&args.journal) {
        Ok(checked) => {
            let text = if args.json {
                json::whole(&checked)?
            } else {
                screens::whole(&args.journal, &checked)
            };
            Ok(Answer::new(text))
        }
        Err(damaged @ JournalError::Damaged { .. }) => {
            // What can be told of the lines after the first damaged one is what a repair finds.
            let repair = Repair::plan(&args.journal, &clock::stamp()?)?;
            let text = if args.json { json::damaged(&repair)? } else { screens::damaged(&repair) };
            Ok(Answer::new(text).failing(damaged.into()))
        }
        Err(error) => Err(error.into()),
    }
}
