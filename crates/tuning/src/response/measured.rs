//! What moving a part of the bow does to where bare shafts land.

use nalgebra::Matrix2;
use quarterturn_geometry::Offset;
use quarterturn_statistics::Interval;

use crate::BowPart;

/// What was learned from the measured moves of one part.
#[derive(Clone, Debug, PartialEq)]
pub struct Response {
    /// The part.
    pub part: BowPart,
    /// How many moves of it were measured.
    pub moves: usize,
    /// One direction where all moves went along one line; right and up where they did not.
    pub along: Vec<Along>,
    /// Counted bare shots beside the bow before these moves.
    pub shots_before: usize,
    /// Counted bare shots beside the bow after them.
    pub shots_after: usize,
}

/// What one millimetre of the part does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Along {
    /// The direction of the millimetre: of length 1, to the right or straight up.
    pub direction: Offset,
    /// How far it moves bare shafts at the target, mm for each mm.
    pub mm_per_mm: Offset,
    /// The covariance of that, right then up.
    pub covariance: Matrix2<f64>,
}

/// The standard normal lies within ± this nine times in ten.
const NINETY_PERCENT: f64 = 1.644_853_626_951_473;

impl Along {
    /// The 90 % intervals of what it does, to the right and up.
    pub fn intervals(&self) -> [Interval; 2] {
        let around = |mean: f64, variance: f64| {
            let half = NINETY_PERCENT * variance.sqrt();
            Interval { lower: mean - half, upper: mean + half, level: 0.9 }
        };
        [
            around(self.mm_per_mm.x_mm, self.covariance.m11),
            around(self.mm_per_mm.y_mm, self.covariance.m22),
        ]
    }
}
