//! A whole dozen, played from a seed: by this program's advice, or by another way of going about it.
//!
//! Everybody shoots the same invented archer with the same shafts, and is judged by the same truth.

mod eight_positions;
mod fate;
mod figures;
mod habit;
mod outcome;
mod program;
mod protocol;
mod said;
mod session;
#[cfg(test)]
mod tests;
mod told_levels;
mod true_scales;

pub use fate::{Fate, Mistake, Ruling};
pub use figures::{Bin, Figures};
pub use outcome::{BowAsked, Outcome};
pub use protocol::Protocol;
pub use said::Said;
