//! Finished, fletched arrows: where broadheads land beside field points, and how far off a plate is still hit.
//!
//! A [`Group`] is what was shot; it touches nothing of the flight model of bare shafts. [`compare_heads`] and
//! [`reach`] read groups and nothing else.

mod group;
mod growth;
mod head;
mod heads;
mod more_shots;
mod plate_bound;
mod pooled;
mod reach;

pub use group::{Group, Start};
pub use growth::{Grows, Growth};
pub use head::{Head, HeadNameError};
pub use heads::{AtDistance, Comparison, Difference, HeadVerdict, compare_heads};
#[cfg(test)]
pub(crate) use plate_bound::PlateBound;
pub use reach::{Chance, EndedBy, Farthest, Reach, Rung, ShotKind, reach};
