//! A shaft as it truly is.

use super::luck::Luck;
use super::vector::Vector;
use super::world::{
    BADLY_BUILT, BADLY_BUILT_WORSE, CENTRE_MM, LEAN_OF_ITS_OWN_DEG, ONCE_AGAINST_MM, ONCE_MM,
    TWICE_AGAINST_MM, TWICE_MM, UNREPEATABLE,
};

/// The planted truth of one shaft; displacements are those with the mark at 12 o'clock.
pub struct Shaft {
    centre: Vector,
    once: Vector,
    once_against: Vector,
    twice: Vector,
    twice_against: Vector,
    /// How far its lean departs from what its miss alone would give, degrees.
    pub lean_of_its_own: Vector,
    pub groups: bool,
}

impl Shaft {
    /// A shaft as builders get them, its faults multiplied by `fault`.
    pub fn build(fault: f64, luck: &mut Luck) -> Self {
        let groups = !luck.happens(UNREPEATABLE);
        let fault = if luck.happens(BADLY_BUILT) { fault * BADLY_BUILT_WORSE } else { fault };
        Self {
            centre: luck.scatter(fault * CENTRE_MM),
            once: luck.scatter(fault * ONCE_MM),
            once_against: luck.scatter(fault * ONCE_AGAINST_MM),
            twice: luck.scatter(fault * TWICE_MM),
            twice_against: luck.scatter(fault * TWICE_AGAINST_MM),
            lean_of_its_own: luck.scatter(LEAN_OF_ITS_OWN_DEG),
            groups,
        }
    }

    /// Where it lands on average with its mark at `index_deg`, from where bare shafts as a whole land.
    pub fn miss(&self, index_deg: f64) -> Vector {
        self.centre
            + self.once.clockwise(index_deg)
            + self.once_against.clockwise(-index_deg)
            + self.twice.clockwise(2.0 * index_deg)
            + self.twice_against.clockwise(-2.0 * index_deg)
    }
}
