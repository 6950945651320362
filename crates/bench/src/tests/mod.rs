//! The checks of this crate: published figures, planted shafts, every subset.

mod cuts;
mod planted;
mod subsets;
mod worked;
