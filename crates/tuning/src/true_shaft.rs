//! What is true of an invented shaft.

use quarterturn_geometry::{Index, Offset};
use rand::RngExt;
use rand_pcg::Pcg64;

use crate::World;
use crate::planar::planar;

/// The parts of a shaft, known to the millimetre; displacements are those with the mark at 12 o'clock.
#[derive(Clone, Debug)]
pub struct TrueShaft {
    centre: Offset,
    turning: Offset,
    turning_against: Offset,
    stiff: Offset,
    stiff_against: Offset,
    third: Offset,
    lean_differs: [Offset; 2],
    /// How many times as wide as others it scatters.
    pub wider: f64,
}

impl TrueShaft {
    /// Draws a shaft from `world`.
    pub fn draw(world: &World, random: &mut Pcg64) -> Self {
        let loose = random.random::<f64>() < world.loose_share;
        let crooked = random.random::<f64>() < world.crooked_share;
        let larger = if crooked { world.crooked_larger } else { 1.0 };
        let mut part = |size_mm: f64| planar(random, size_mm * larger);
        Self {
            centre: part(world.centre_mm),
            turning: part(world.turning_mm),
            turning_against: part(world.turning_mm * world.against_share),
            stiff: part(world.stiff_mm),
            stiff_against: part(world.stiff_mm * world.against_share),
            third: part(world.third_mm),
            lean_differs: [0, 1].map(|_| planar(random, world.lean_discrepancy_deg)),
            wider: if loose { world.loose_wider } else { 1.0 },
        }
    }

    /// What the shaft itself asks of the bow with its mark at `index`.
    pub fn own_miss(&self, index: Index) -> Offset {
        let mark = index.angle();
        self.centre
            + self.turning.rotated(-mark)
            + self.turning_against.rotated(mark)
            + self.stiff.rotated(mark * -2.0)
            + self.stiff_against.rotated(mark * 2.0)
            + self.third.rotated(mark * -3.0)
    }

    /// What its lean differs from the lean that goes with its miss, degrees.
    pub fn lean_differs(&self, index: Index) -> Offset {
        let [centre, turning] = self.lean_differs;
        centre + turning.rotated(-index.angle())
    }
}
