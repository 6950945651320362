//! `shaft`: what became of a shaft.

use quarterturn_journal::{Entry, ShaftEntry, Word};

use crate::answer::Answer;
use crate::args::ShaftArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{json, screens};

/// Records what became of a shaft or a reference.
pub fn run(args: &ShaftArgs) -> Result<Answer, Failure> {
    let change = args.state.change();
    let mut opened = Opened::to_add(&args.journal)?;
    let entry =
        ShaftEntry { shaft: args.name.clone(), change: change.word().to_owned(), note: None };
    let confirmed = opened.append(Entry::Shaft(entry))?;
    let text = if args.json {
        json::recorded(&confirmed)?
    } else {
        screens::recorded_shaft(&opened, &args.name, change)
    };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}
