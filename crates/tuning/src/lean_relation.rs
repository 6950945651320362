//! How leans go with misses, as a journal has taught it.

use quarterturn_geometry::Lean;
use quarterturn_statistics::Interval;

/// The relation between where a bare shaft lands and how it leans, both from the fletched reference.
///
/// # Formula
/// lean = common + slope × miss, on each axis, in the mean of many shots of one shaft at one index. Single hits scatter
/// about that mean, so that a line through them is less steep.
///
/// The slope is the one that the advice goes by. Its interval is normal, from how quickly the likelihood falls to both sides
/// of it, together with what was expected before the first shot.
///
/// # Signs
/// A slope below zero: a shaft that lands to the right has its tail to the left, one that lands high has its tail low.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeanRelation {
    /// The lean that goes with a miss, degrees for each millimetre.
    pub slope_deg_per_mm: f64,
    /// Its 90 % interval, degrees for each millimetre.
    pub interval: Interval,
    /// How a bare shaft leans that lands on the reference, with the bow as it stands.
    pub common: Lean,
    /// The counted bare shots whose lean was read.
    pub shots: usize,
}
