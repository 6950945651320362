//! One option that is set.

use super::Origin;
use super::settable::COMMANDS;

/// An option of a command, the value it is set to, and where.
#[derive(Clone, Debug)]
pub struct Setting {
    /// The command.
    pub command: &'static str,
    /// The option, without its dashes.
    pub option: &'static str,
    /// What would be typed behind it.
    pub value: String,
    /// Where it is set.
    pub origin: Origin,
}

impl Setting {
    /// Whether `other` sets the same option.
    pub fn is_same(&self, other: &Self) -> bool {
        (self.command, self.option) == (other.command, other.option)
    }

    /// Its place among all that can be set.
    pub fn place(&self) -> Option<usize> {
        let mut all = COMMANDS
            .iter()
            .flat_map(|(command, options)| options.iter().map(move |option| (*command, *option)));
        all.position(|known| known == (self.command, self.option))
    }
}
