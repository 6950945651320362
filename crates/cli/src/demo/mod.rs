//! An invented dozen in an invented place, tuned from the first shot to the last.

mod invented;
mod played;
mod transcript;

pub use played::{Played, play};
