//! What an arrow carries: kinetic energy and momentum.

use crate::Grains;

/// Standard gravity, m/s² (exact; BIPM, SI brochure), which makes a pound of force of a pound.
const GRAVITY_M_S2: f64 = 9.806_65;
const KILOGRAMS_PER_POUND: f64 = 0.453_592_37;
const METRES_PER_FOOT: f64 = 0.3048;

/// One foot-pound of energy, J: 0.3048 · 0.45359237 · 9.80665, exact.
pub const JOULES_PER_FOOT_POUND: f64 = METRES_PER_FOOT * KILOGRAMS_PER_POUND * GRAVITY_M_S2;

/// One slug-foot a second of momentum, N·s: the momentum that a pound of force gives in a second, exact.
pub const NEWTON_SECONDS_PER_SLUG_FOOT: f64 = KILOGRAMS_PER_POUND * GRAVITY_M_S2;

/// The kinetic energy of an arrow, J.
///
/// # Formula
/// E = m v² / 2. In foot-pounds that is m v² / 450 436.68 with m in grains and v in feet a second; the divisors 450 240
/// and 450 800 of the trade rest on a rounded gravity and differ by less than 0.1 %.
/// # Source
/// Elementary mechanics; the divisors are common practice.
pub fn kinetic_energy_j(mass: Grains, speed_m_s: f64) -> f64 {
    0.5 * mass.kilograms() * speed_m_s * speed_m_s
}

/// The momentum of an arrow, N·s.
///
/// # Formula
/// p = m v.
/// # Source
/// Elementary mechanics.
pub fn momentum_n_s(mass: Grains, speed_m_s: f64) -> f64 {
    mass.kilograms() * speed_m_s
}
