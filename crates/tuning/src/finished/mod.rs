//! Finished, fletched arrows: whether each lands where it should, where broadheads land beside field points, and how far
//! off a plate is still hit.
//!
//! A [`Group`] is what was shot; it touches nothing of the flight model of bare shafts. [`verify`], [`compare_heads`] and
//! [`reach`] read groups and nothing else.

mod arrow_means;
mod group;
mod group_shape;
mod growth;
mod head;
mod heads;
mod hits_at;
mod more_shots;
mod pair;
mod plate_bound;
mod pooled;
mod reach;
mod sight_move;
mod together;
mod verified;

pub use arrow_means::FromTheOthers;
pub use group::{Group, Start};
pub use group_shape::{DrawnOut, GroupShape};
pub use growth::{Grows, Growth};
pub use head::{Head, HeadNameError};
pub use heads::{AtDistance, Comparison, Difference, compare_heads};
pub use hits_at::{HitsAt, HitsOfKind, hits_at};
pub use pair::Pair;
#[cfg(test)]
pub(crate) use plate_bound::PlateBound;
pub use reach::{Chance, EndedBy, Farthest, Reach, Rung, ShotKind, reach};
pub use sight_move::SightMove;
pub use together::TogetherVerdict;
pub use verified::{Centre, Verified, VerifiedArrow, verify};
