//! The flight of one invented shot: what the hand adds to where its arrow lands on average.

use quarterturn_geometry::Offset;
use rand::RngExt;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

use crate::World;
use crate::planar::planar;

/// How many times as wide a flyer goes.
pub const FLYER_WIDER: f64 = 3.0;

/// Where a shot lands and how it leans, read in the frame of its end.
#[derive(Clone, Copy, Debug)]
pub struct Flight {
    /// From the spot.
    pub hit: Offset,
    /// Degrees.
    pub lean_deg: Offset,
}

impl Flight {
    /// The scatter and the reading of one shot by a hand that spreads `spread_mm`, about `mean`.
    pub fn about(mean: Self, world: &World, spread_mm: f64, random: &mut Pcg64) -> Self {
        let flies = if random.random::<f64>() < world.flyer_share { FLYER_WIDER } else { 1.0 };
        let sd_mm = spread_mm * flies;
        let (across_mm, up_mm) = (sd_mm / world.taller.sqrt(), sd_mm * world.taller.sqrt());
        let torque_mm = across_mm * world.torque_share;
        let torque = Offset::new(StandardNormal.sample(random), 0.0) * torque_mm;
        let scatter = planar(random, 1.0);
        // To the sides torque takes its share out of the spread and adds nothing to it.
        let still_mm = across_mm * (1.0 - world.torque_share.powi(2)).sqrt();
        let still = Offset::new(scatter.x_mm * still_mm, scatter.y_mm * up_mm);
        let reading = planar(random, world.read_mm);
        let wobble_deg = planar(random, world.lean_shot_deg * flies);
        Self {
            hit: mean.hit + torque + still + reading,
            lean_deg: mean.lean_deg + torque * world.lean_deg_per_mm + wobble_deg,
        }
    }
}

/// The lean, degrees, that goes with a miss: it grows with it, then no further, and turns back.
pub fn lean_with(miss: Offset, world: &World) -> Offset {
    let bent = (-(miss.length().mm() / world.lean_bends_at_mm).powi(2) / 2.0).exp();
    miss * (world.lean_deg_per_mm * bent)
}
