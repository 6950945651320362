//! Small-sample, planar and circular statistics.

pub mod distributions;

mod circle_probability;
mod interval;
mod principal_axes;

pub use circle_probability::{approximate_probability_within_circle, probability_within_circle};
pub use interval::Interval;
pub use principal_axes::PrincipalAxes;
