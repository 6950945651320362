//! Small-sample, planar and circular statistics.

mod interval;

pub use interval::Interval;
