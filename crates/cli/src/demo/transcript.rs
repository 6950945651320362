//! What the demo prints: the screens that a person would see, with what is left out named.

use quarterturn_tuning::{Aim, PlannedShot, Purpose, Step};

use super::invented::turned;
use super::{Audience, Going};
use crate::failure::Failure;

/// Screens one below the other.
#[derive(Default)]
pub struct Transcript {
    blocks: Vec<String>,
    left_out: usize,
    ends: usize,
    middle_was_shown: bool,
    /// Whether what is done next is left out.
    leaves_out: bool,
}

impl Transcript {
    /// The transcript with a last word.
    pub fn ending(mut self, last: &str) -> String {
        self.say_what_is_left_out();
        self.blocks.push(last.to_owned());
        self.blocks.join("\n\n")
    }

    fn screen(&mut self, command: &str, screen: &str) {
        self.say_what_is_left_out();
        self.blocks.push(shown(command, screen));
    }

    /// The first end is shown, and the first that both tries and confirms something.
    fn is_left_out(&mut self, shots: &[PlannedShot]) -> bool {
        self.ends += 1;
        let confirms =
            |shot: &PlannedShot| matches!(shot.purpose, Purpose::Bare { aim: Aim::Confirm, .. });
        let middle = shots.iter().any(confirms)
            && shots.iter().any(|shot| turned(shot.purpose).is_some())
            && !std::mem::replace(&mut self.middle_was_shown, true);
        self.ends > 1 && !middle
    }

    fn say_what_is_left_out(&mut self) {
        let said = match std::mem::take(&mut self.left_out) {
            0 => return,
            1 => "  [one more end, shot and entered in the same way]".to_owned(),
            ends => format!("  [{ends} more ends, shot and entered in the same way]"),
        };
        self.blocks.push(said);
    }
}

impl Audience for Transcript {
    fn asked(&mut self, command: &str, screen: &str, step: &Step) -> Result<Going, Failure> {
        self.leaves_out = matches!(step, Step::Shoot(shots) if self.is_left_out(shots));
        if self.leaves_out {
            self.left_out += 1;
        } else {
            self.screen(command, screen);
        }
        Ok(Going::On)
    }

    fn done(&mut self, command: &str, screen: &str) -> Result<(), Failure> {
        if !std::mem::take(&mut self.leaves_out) {
            self.screen(command, screen);
        }
        Ok(())
    }
}

/// A command as it is typed, and its screen.
pub fn shown(command: &str, screen: &str) -> String {
    format!("$ {command}\n{}", screen.trim_end())
}
