//! How far a pin is moved.

use nalgebra::Vector2;
use quarterturn_geometry::Millimetres;
use quarterturn_statistics::{Estimate, Family, Interval, PlanarEstimate, StatisticError};

use super::together::LEVEL;

/// Both axes together are to hold.
const BOTH: Family = Family::Planned(2);

/// A miss of the centre of a group, or the move of a pin that takes it away: to the right and up, with intervals that
/// hold together at 95 %.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SightMove {
    /// To the right, mm.
    pub x: Estimate,
    /// Up, mm.
    pub y: Estimate,
}

impl SightMove {
    /// The miss of a centre at the target.
    ///
    /// # Errors
    /// Those of [`PlanarEstimate::along`].
    pub fn miss(centre: &PlanarEstimate) -> Result<Self, StatisticError> {
        let along = |direction| centre.along(direction, BOTH, LEVEL);
        Ok(Self { x: along(Vector2::x())?, y: along(Vector2::y())? })
    }

    /// The move of the pin that takes this miss away.
    ///
    /// # Formula
    /// By similar triangles from the eye: move = miss · e/d, e from the eye to the pin and d from the eye to the target,
    /// *toward* the miss, since the bow is then aimed the other way until the pin covers the spot again.
    ///
    /// # Source
    /// Plain geometry; that the pin follows the arrow is common practice.
    #[must_use]
    pub fn of_pin(self, eye_to_pin: Millimetres, distance: Millimetres) -> Self {
        let share = eye_to_pin.mm() / distance.mm();
        let scaled = |miss: Estimate| {
            let Estimate { value, standard_error, interval, n } = miss;
            let interval = Interval {
                lower: share * interval.lower,
                upper: share * interval.upper,
                ..interval
            };
            Estimate { value: share * value, standard_error: share * standard_error, interval, n }
        };
        Self { x: scaled(self.x), y: scaled(self.y) }
    }

    /// Both parts, each with whether it is surely not nought.
    pub fn parts(self) -> [(Estimate, bool); 2] {
        [self.x, self.y].map(|part| (part, part.interval.lower > 0.0 || part.interval.upper < 0.0))
    }
}
