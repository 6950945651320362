//! Small-sample, planar and circular statistics.

pub mod distributions;

mod circle_probability;

mod estimate;
mod harmonic_fit;
mod interval;
mod level;
mod mean_direction;
mod planar_sample;
mod pooled_spread;
mod principal_axes;
mod sample;

pub use circle_probability::{approximate_probability_within_circle, probability_within_circle};
pub use estimate::Estimate;
pub use harmonic_fit::{HarmonicError, HarmonicFit};
pub use interval::Interval;
pub use level::{Level, LevelError};
pub use mean_direction::MeanDirection;
pub use planar_sample::PlanarSample;
pub use pooled_spread::{PooledSpread, SpreadError};
pub use principal_axes::PrincipalAxes;
pub use sample::{Sample, SampleError};
