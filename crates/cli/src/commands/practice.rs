//! `practice`: the whole job on an invented dozen, an end at a time.

use std::io::{self, IsTerminal};

use quarterturn_tuning::{Step, World};

use crate::answer::Answer;
use crate::args::PracticeArgs;
use crate::demo::{Audience, Going, play, shown};
use crate::failure::Failure;
use crate::wording::{command, paragraph};
use crate::{clock, input, report};

/// What is asked before each step.
const PROMPT: &str = "Enter: it is done and entered for you (q and Enter: stop here) ";

/// Plays a tuning before the person who asked for it.
pub fn run(args: &PracticeArgs) -> Result<Answer, Failure> {
    let seed = args.seed.unwrap_or_else(clock::seed);
    let mut person = Person { waits: !args.no_input };
    let played = play(&args.journal, World::ORDINARY, seed.into(), &mut person)?;
    let again = format!(
        "The same archer and shafts again: quarterturn practice <JOURNAL> --seed {seed}\nSee: {}",
        command("show", &played.opened.path)
    );
    Ok(Answer::new(format!(
        "What the archer could not see, and you can:\n\n{}\n\n{}\n\n{again}\n",
        played.truths(),
        paragraph("", &played.truth())
    )))
}

/// Somebody at a terminal, or a script.
struct Person {
    waits: bool,
}

impl Audience for Person {
    fn asked(&mut self, command: &str, screen: &str, step: &Step) -> Result<Going, Failure> {
        self.done(command, screen)?;
        if !self.waits || matches!(step, Step::Finished(_)) {
            return Ok(Going::On);
        }
        if io::stdin().is_terminal() {
            report::ask(PROMPT);
        }
        let line = input::line()?;
        // Where nobody is there to press Enter any more, it ends as with q.
        Ok(if line.is_none_or(|line| line.trim() == "q") { Going::Stop } else { Going::On })
    }

    fn done(&mut self, command: &str, screen: &str) -> Result<(), Failure> {
        report::say(&format!("{}\n\n", shown(command, screen)))
    }
}
