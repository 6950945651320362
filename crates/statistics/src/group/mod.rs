//! What a group of points on a plane is like: how wide, how round, where its middle is, and whether it moves.

mod convex_hull;
mod drift;
mod expected_extreme_spread;
mod extreme_spread;
mod geometric_median;
mod influence;
mod mean_radius;
mod prediction_ellipse;
mod radius_holding;
mod ranks;
mod sphericity;

pub use expected_extreme_spread::{ExpectedExtremeSpread, expected_extreme_spread};
pub use influence::{Influence, Summary};
pub use mean_radius::expected_mean_radius;
