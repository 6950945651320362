//! What a dozen will take, from many invented ones.

mod alternatives;
mod conditions;
mod found;
mod range;

pub use alternatives::{Alternative, alternatives};
pub use conditions::Conditions;
pub use found::{Found, rehearse};
pub use range::Range;
