//! The ways of going about a dozen that are compared.

use super::{Outcome, eight_positions, habit, program, told_levels};
use crate::{Setup, World};

/// A way of going about a dozen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Protocol {
    /// This program's advice, followed to its end; the bow is moved when that is asked for.
    Program,
    /// The usual habit: a few shafts are shot beside the reference, each is kept when it hit within the tolerance of it
    /// twice at one quarter of the clock, turned on by a quarter when it missed twice, and given up after the round (common
    /// practice, from memory). The bow stays as it is.
    Habit,
    /// Eight positions shot three times each, and the best mean kept if it is inside the tolerance. The bow stays.
    EightPositions,
    /// A solver that is told every level: the same Gaussian posterior with the scales that the world was drawn from, this
    /// archer's own spread, and which shafts do not group; these are retired after three shots. Each other shaft is shot at its likeliest index until it is kept or retired by the levels of
    /// the default policy, or left open after twelve shots; nothing is looked ahead, and the bow stays.
    ToldLevels,
}

impl Protocol {
    /// All of them, this program first.
    pub const ALL: [Self; 4] = [Self::Program, Self::Habit, Self::EightPositions, Self::ToldLevels];

    /// Plays the dozen of `setup`, drawn from `world`, from the first shot to the last; the same seed plays the same.
    pub fn play(self, setup: &Setup, world: World, seed: u64) -> Outcome {
        match self {
            Self::Program => program::play(setup, world, seed),
            Self::Habit => habit::play(setup, world, seed),
            Self::EightPositions => eight_positions::play(setup, world, seed),
            Self::ToldLevels => told_levels::play(setup, world, seed),
        }
    }
}
