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
//!
//! # Example
//! ```
//! use quarterturn_entry::{Advising, quantity::Unit, shorthand};
//!
//! let end = shorthand::parse("R r4 d6, 7 i3 r31 u8 tl2.5", Unit::MILLIMETRE).map_err(|located| located.fault)?.entry;
//! let seven = &end.shots[1];
//! assert_eq!((seven.shaft.as_str(), seven.index_deg), ("7", Some(90.0)));
//! assert_eq!((seven.x_mm, seven.y_mm, seven.lean_x_deg), (Some(31.0), Some(8.0), Some(-2.5)));
//!
//! // What cannot be read is said with its place and a way on.
//! let located = shorthand::parse("7 r31 z8", Unit::MILLIMETRE).unwrap_err();
//! assert_eq!((located.span.start, located.fault.way_on().is_some()), (6, true));
//! # Ok::<(), shorthand::ShorthandFault>(())
//! ```

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
