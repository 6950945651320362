//! How much higher a bare shaft lands only because it lacks the mass of the vanes.

use quarterturn_geometry::Millimetres;

use crate::{MissingMass, Setup};

/// Standard gravity, m/s² (exact; BIPM, SI brochure).
const GRAVITY_M_S2: f64 = 9.806_65;

/// How much higher bare shafts land than the reference for want of the vanes' mass; zero where none is stated.
///
/// # Formula
/// ```text
/// drop   = g d² / (2 v²)           of an arrow at speed v over the distance d
/// Δv / v = Δm / (2 m)              the bow gives both the same energy
/// height = drop · 2 Δv / v = g d² Δm / (2 v² m)
/// ```
/// # Assumptions
/// A flat shot without drag, and the same energy in both arrows: good to a few millimetres at 18 m.
/// # Source
/// Elementary mechanics; that 20 gr lift a bare shaft by about 1 cm at 18 m is common practice.
pub fn known_height(setup: &Setup) -> Millimetres {
    let Some(MissingMass { lighter_gr, arrow_gr, speed_m_s }) = setup.bare_lighter else {
        return Millimetres::ZERO;
    };
    let time_s = setup.distance.metres() / speed_m_s;
    Millimetres::from_metres(0.5 * GRAVITY_M_S2 * time_s * time_s * lighter_gr / arrow_gr)
}
