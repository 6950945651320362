//! What people read: typed values become sentences here and nowhere else.

mod as_words;
mod asides;
mod beside_others;
mod bow_move;
mod cautions;
mod clock;
mod count;
mod doubt;
mod goes_with;
mod heads;
mod hint;
mod how_to_fletch;
mod improbable;
mod inspection;
mod noted;
mod paragraph;
mod pause;
mod percent;
mod quiver;
mod reason;
mod ruler;
mod shell;
mod standing_out;
mod table;
mod tail;
mod tally;
#[cfg(test)]
mod tests;
mod turn_buys;
mod verify;
mod why;

pub use as_words::as_words;
pub use asides::asides;
pub use beside_others::{beside_others, off, open_beside};
pub use bow_move::{part, response_seen, what_to_move};
pub use cautions::{
    BEFORE_THE_FIRST_BARE_SHOT, CUTTING, FLEX_AND_LOOK, GLUE, INSERTS, LEAST_MASS, OF_A_REACH,
};
pub use clock::{instruction, mark, turn};
pub use count::count;
pub use doubt::doubt;
pub use goes_with::goes_with;
pub use heads::{WITH_BROADHEADS, growth, head_on, head_verdict, pairs};
pub use hint::{hint, hint_kind};
pub use how_to_fletch::how_to_fletch;
pub use improbable::{improbable, improbable_here};
pub use inspection::{inspection, to_measure};
pub use noted::noted;
pub use paragraph::{lines, paragraph};
pub use pause::pause;
pub use percent::{percent, percent_short};
pub use quarterturn_entry::{all, either, visible};
pub use quiver::{
    AFTER_A_HARD_HIT, AFTER_A_NEW_NOCK, AFTER_A_NEW_STRING, IN_THE_QUIVER, compared, rechecks,
};
pub use reason::{reason, retire_reason, verdict};
pub use ruler::Ruler;
pub use shell::command;
pub use standing_out::{far_shot, wide_shaft};
pub use table::Table;
pub use tail::tail;
pub use tally::tally;
pub use turn_buys::WHAT_A_TURN_BUYS;
pub use verify::{SIGHT, group_shapes, sight, verified};
pub use why::{purpose, settles, why};
