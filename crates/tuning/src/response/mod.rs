//! What moving the bow does, measured from the journal's own moves.

mod bow_move;
mod learned_response;
mod measured;

pub use self::bow_move::{BowMove, bow_moves};
pub use self::learned_response::LearnedResponse;
pub use self::measured::{Along, Response};
