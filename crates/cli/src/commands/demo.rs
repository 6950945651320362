//! `demo`: to come.

use crate::answer::Answer;
use crate::args::DemoArgs;
use crate::failure::Failure;

/// Plays a whole tuning.
pub fn run(args: &DemoArgs) -> Result<Answer, Failure> {
    Ok(Answer::new(format!("{}\n", args.folder.display())))
}
