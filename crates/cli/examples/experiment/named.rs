//! The names of the worlds and the protocols.

use quarterturn_tuning::{Protocol, World};

/// The worlds, the ordinary one first.
pub const WORLDS: [(&str, World); 8] = [
    ("ordinary", World::ORDINARY),
    ("steady", World::STEADY),
    ("shaky", World::SHAKY),
    ("taller than wide", World::TALL),
    ("lean not read", World::LEAN_NOT_READ),
    ("lean bends back", World::LEAN_BENDS),
    ("good dozen", World::GOOD_DOZEN),
    ("bow 60 mm off", World::BOW_OFF),
];

/// The protocols, this program first.
pub const PROTOCOLS: [(&str, Protocol); 4] = [
    ("program", Protocol::Program),
    ("habit", Protocol::Habit),
    ("eight positions", Protocol::EightPositions),
    ("told levels", Protocol::ToldLevels),
];
