//! `completions`: what a shell needs to complete a command.

use crate::answer::Answer;
use crate::args::{CompletionsArgs, definition};

/// Prints it; nothing is written anywhere.
pub fn run(args: &CompletionsArgs) -> Answer {
    let mut script = Vec::new();
    clap_complete::generate(args.shell, &mut definition(), "quarterturn", &mut script);
    Answer::new(String::from_utf8_lossy(&script).into_owned())
}
