//! `show`: how every shaft stands.

use crate::answer::Answer;
use crate::args::ShowArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{json, screens};

/// Shows every shaft; the journal is only read.
pub fn run(args: &ShowArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let doubts = opened.doubts();
    let text = if args.json {
        json::show(&opened, &doubts)?
    } else {
        screens::show(&opened, &opened.advice(), &doubts)
    };
    Ok(Answer::new(text).noticing(opened.notices()))
}
