//! Whether two centres are together, by the archer's own measure.

use nalgebra::Vector2;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{Ellipse, Level, PlanarEstimate};

/// The level of everything that is said of a difference.
pub(super) const LEVEL: Level = Level::P95;

/// More than this nobody shoots for one question.
const MOST: usize = 60;

/// Whether two centres are together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TogetherVerdict {
    /// It is shown at 95 % that they are.
    Together,
    /// It is shown at 95 % that they are not.
    Apart,
    /// Neither is shown.
    Open {
        /// About how many more shots of each kind, or of each arrow, would show one of the two, if the centres and the
        /// scatter stay as they are; nothing where that is more than 60.
        more: Option<usize>,
    },
}

/// What is shown of a difference; nothing where neither is. Apart is said at the level `apart`.
pub(super) fn shown(
    estimate: &PlanarEstimate,
    together: Millimetres,
    apart: Level,
) -> Option<TogetherVerdict> {
    let bound = estimate.distance(LEVEL).ok()?;
    if bound.is_within(together.mm()) {
        Some(TogetherVerdict::Together)
    } else {
        (at_least_mm(estimate, apart) > together.mm()).then_some(TogetherVerdict::Apart)
    }
}

/// How far the region at `level` keeps from the origin: the farthest of its supporting lines, one in each degree.
///
/// Each of these lines parts the region from the circle about the origin that it touches, so that what lies between two
/// degrees only makes the answer smaller than it could be.
pub(super) fn at_least_mm(estimate: &PlanarEstimate, level: Level) -> f64 {
    let Ellipse { centre, matrix, .. } = estimate.region(level);
    let nearest = |degree: u32| {
        let (sin, cos) = f64::from(degree).to_radians().sin_cos();
        let along = Vector2::new(cos, sin);
        along.dot(&centre) - along.dot(&(matrix * along)).sqrt()
    };
    (0..360).map(nearest).fold(0.0, f64::max)
}

/// The fewest more shots that decide; nothing where 60 do not. What some shots show, more must show too.
pub(super) fn fewest_more(decides: impl Fn(usize) -> bool) -> Option<usize> {
    let (mut too_few, mut enough) = (0, MOST);
    while enough - too_few > 1 {
        let more = too_few.midpoint(enough);
        if decides(more) { enough = more } else { too_few = more }
    }
    decides(enough).then_some(enough)
}
