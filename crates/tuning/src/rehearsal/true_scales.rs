//! The scales of the flight model as a world truly is.

use quarterturn_geometry::Millimetres;

use crate::flight::FLYER_WIDER;
use crate::{Scales, World};

/// The scales of an archer from `world` who spreads `spread`.
///
/// Where a world has two kinds (shafts with more than the usual fault, shots that fly far) it is their root mean square.
pub fn true_scales(world: &World, spread: Millimetres, distance: Millimetres) -> Scales {
    let mixed = |share: f64, larger: f64| (1.0 + share * (larger * larger - 1.0)).sqrt();
    let faults = mixed(world.crooked_share, world.crooked_larger);
    let reference_mm = spread.mm() * mixed(world.flyer_share, FLYER_WIDER);
    // A bow off by a fixed way in any direction has half the square of it on each axis.
    let common_mm = world.common_mm.hypot(world.bow_off_mm * std::f64::consts::FRAC_1_SQRT_2);
    Scales {
        taller: world.taller,
        reference_mm,
        bare_mm: reference_mm * world.bare_wider,
        aim_mm: [world.drift_mm; 2],
        read_mm: world.read_mm,
        bare_lean_deg: world.lean_shot_deg,
        reference_lean_deg: world.lean_shot_deg,
        read_lean_deg: NEARLY_NOTHING,
        frame_deg: world.lean_frame_deg,
        common_mm,
        centre_mm: world.centre_mm * faults,
        turning_mm: world.turning_mm * faults,
        stiff_mm: world.stiff_mm * faults,
        against_share: world.against_share.hypot(world.uneven_share),
        set_share: NEARLY_NOTHING,
        between_references_mm: NEARLY_NOTHING,
        between_references_deg: NEARLY_NOTHING,
        lean_per_miss_deg_per_mm: world.lean_deg_per_mm,
        discrepancy_deg: world.lean_discrepancy_deg,
        ..Scales::at(distance)
    }
}

/// What a world has not got; a scale of nothing at all has no precision.
const NEARLY_NOTHING: f64 = 0.01;
