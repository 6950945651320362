//! What people type and other programs write, read into the entries of a journal, and printed back.
//!
//! - [`shorthand`] is the short line in which an end is typed; `docs/entry.md` has its grammar.
//! - [`pixels`] are places in a photo: of holes and of marks.
//! - [`quantity`] is a number with its unit, as people type it.
//! - [`table`] is a table of shots from outside, and [`exported`] an export as JSON: both are read into
//!   [`Incoming`] entries, each with an id, so that nothing is added twice.
//! - A [`Located`] fault stands where it was found in the text, and is [`Advising`]: it says a way on.
//!
//! The crate is pure: text in, entries or faults out. It reads no file and prints nothing.

mod content_id;
mod exported;
mod incoming;
mod list;
mod located;
pub mod pixels;
pub mod quantity;
pub mod shorthand;
mod suggestion;
pub mod table;
mod visible;

pub use exported::exported;
pub use incoming::Incoming;
pub use list::{all, either};
pub use located::{Advising, Located};
pub use suggestion::closest;
pub use visible::{is_hidden, visible, visible_json};
