//! Mean points, their differences, and what can be said of them.

mod difference;
mod distance;
mod hotelling;
mod mean_point;
mod simultaneous;

pub use distance::DistanceBound;
pub use simultaneous::Family;
