//! An invented dozen in an invented place, tuned from the first shot to the last.

mod audience;
mod invented;
mod played;
mod transcript;
mod truth;

pub use audience::{Audience, Going};
pub use invented::{JOURNAL, SEED, WORLD};
pub use played::{Played, play};
pub use transcript::{Transcript, shown};
