//! What follows on a line.

use quarterturn_journal::EndEntry;

/// What a dialogue makes of what it heard.
pub enum Heard {
    /// The next screen, which asks for a line.
    Asking(String),
    /// The end is entered.
    Done(EndEntry),
    /// The person has gone, or does not want it.
    Stopped,
}
