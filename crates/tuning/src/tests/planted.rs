//! A shaft whose parts are known, and that flies exactly as they say.

use quarterturn_geometry::{Index, Offset};

use super::journal::{leaning, shot};
use crate::Shot;

/// Degrees of lean for each millimetre of miss: tail left, hit right.
const LEAN_DEG_PER_MM: f64 = -0.09;

/// What makes a shaft miss, millimetres at the mark's 12 o'clock.
#[derive(Clone, Copy, Default)]
pub struct Planted {
    /// Its centre, the bow's common offset included.
    pub centre: Offset,
    /// What turns once with the mark.
    pub turning: Offset,
    /// What turns twice with the mark.
    pub stiff: Offset,
}

impl Planted {
    /// Where it lands with its mark at `index`.
    pub fn miss(&self, index: Index) -> Offset {
        let mark = index.angle();
        self.centre + self.turning.rotated(-mark) + self.stiff.rotated(mark * -2.0)
    }

    /// A shot that lands there, its tail leaning as the miss asks.
    pub fn shot(&self, shaft: &str, hour: f64) -> Shot {
        let miss = self.miss(Index::from_hour(hour));
        let [x_deg, y_deg] = [miss.x_mm, miss.y_mm].map(|mm| mm * LEAN_DEG_PER_MM);
        leaning(shot(shaft, hour, miss), x_deg, y_deg)
    }
}
