//! A world nobody tuned anything for: its sizes are drawn once, and reported as they come.

use quarterturn_tuning::World;
use rand::{RngExt, SeedableRng};
use rand_pcg::Pcg64;

/// One size of a world: its name, the range it is drawn from, and where it stands.
type Size = (&'static str, [f64; 2], fn(&mut World) -> &mut f64);

/// Ranges about half and twice the ordinary size.
const SIZES: [Size; 21] = [
    ("narrowest spread_mm", [6.0, 20.0], |world| &mut world.spread_mm[0]),
    ("widest spread_mm", [20.0, 40.0], |world| &mut world.spread_mm[1]),
    ("bare_wider", [1.0, 1.6], |world| &mut world.bare_wider),
    ("torque_share", [0.0, 0.4], |world| &mut world.torque_share),
    ("drift_mm", [3.0, 15.0], |world| &mut world.drift_mm),
    ("wander_mm", [0.0, 4.0], |world| &mut world.wander_mm),
    ("common_mm", [4.0, 20.0], |world| &mut world.common_mm),
    ("uneven_share", [0.0, 0.15], |world| &mut world.uneven_share),
    ("centre_mm", [1.0, 6.0], |world| &mut world.centre_mm),
    ("turning_mm", [5.0, 18.0], |world| &mut world.turning_mm),
    ("stiff_mm", [2.0, 12.0], |world| &mut world.stiff_mm),
    ("third_mm", [0.0, 2.0], |world| &mut world.third_mm),
    ("seating_deg", [0.0, 8.0], |world| &mut world.seating_deg),
    ("loose_share", [0.0, 0.2], |world| &mut world.loose_share),
    ("crooked_share", [0.0, 0.2], |world| &mut world.crooked_share),
    ("flyer_share", [0.0, 0.1], |world| &mut world.flyer_share),
    ("lean_deg_per_mm", [-0.15, -0.04], |world| &mut world.lean_deg_per_mm),
    ("lean_bends_at_mm", [25.0, 90.0], |world| &mut world.lean_bends_at_mm),
    ("lean_discrepancy_deg", [0.2, 0.8], |world| &mut world.lean_discrepancy_deg),
    ("lean_shot_deg", [0.8, 2.0], |world| &mut world.lean_shot_deg),
    ("taller", [0.6, 1.7], |world| &mut world.taller),
];

/// Draws a world and prints its sizes.
pub fn world(seed: u64) -> World {
    let mut random = Pcg64::seed_from_u64(seed);
    let mut world = World::ORDINARY;
    println!(
        "A world drawn once, from the seed {seed}:\n\n| size | range | drawn |\n|---|---|---|"
    );
    for (name, [least, most], size) in SIZES {
        *size(&mut world) = least + (most - least) * random.random::<f64>();
        println!("| {name} | {least} to {most} | {:.3} |", size(&mut world));
    }
    println!();
    world
}
