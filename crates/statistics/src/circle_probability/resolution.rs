//! How finely the two sums are taken.

use std::f64::consts::{LN_2, LOG2_E};

/// How finely to sample.
///
/// A bump like a Gaussian of standard deviation s, summed at steps of 2πs/ρ, is off by about e^(−ρ²/2) of itself (the
/// step meets the bump's Fourier transform at ρ/s), and as much of it lies beyond ρ standard deviations.
pub(super) trait Resolution {
    /// ρ along the edge, which the bump's small share of it forgives a little.
    const EDGE: f64;
    /// Above this ratio of radius and smallest standard deviation the edge costs more than strips do.
    const LARGEST_RATIO: f64;
    /// ρ across the strips.
    const STRIPS: f64;
    /// (1 − e^(−q/2))/q for q ≥ 0.
    fn damped(q: f64) -> f64;
}

/// To about 1e-12.
pub(super) struct Fine;

impl Resolution for Fine {
    const EDGE: f64 = 7.5;
    const LARGEST_RATIO: f64 = 24.0;
    const STRIPS: f64 = 8.2;

    /// With −q/2 = n ln 2 + t it is (1 − 2ⁿ − 2ⁿ(eᵗ − 1))/q, n whole and |t| ≤ ½ ln 2, so that eᵗ − 1 is a few terms of its
    /// series and nothing cancels where q is small. There is no branch, which lets two nodes be computed at once.
    fn damped(q: f64) -> f64 {
        // At 0 the fraction has its limit; beyond 1400 e^(−q/2) is nothing.
        let q = q.max(1e-300);
        let exponent = -0.5 * q.min(1400.0);
        let shifted = exponent * LOG2_E + WHOLE;
        let t = exponent - (shifted - WHOLE) * LN_2;
        let power = f64::from_bits(shifted.to_bits().wrapping_add(1023) << 52);
        let series = EXP_M1.iter().fold(0.0, |sum, term| sum * t + term);
        (1.0 - power - power * (t * series)) / q
    }
}

/// Three halves of 2⁵²: added to a number, it leaves no bits for what is below 1, and the whole part in the last ones.
const WHOLE: f64 = 6_755_399_441_055_744.0;

/// (eᵗ − 1)/t by its terms 1/k! from the tenth to the first; for |t| ≤ ½ ln 2 what is left out is below 3e-13.
const EXP_M1: [f64; 10] = [
    1.0 / 3_628_800.0,
    1.0 / 362_880.0,
    1.0 / 40_320.0,
    1.0 / 5040.0,
    1.0 / 720.0,
    1.0 / 120.0,
    1.0 / 24.0,
    1.0 / 6.0,
    1.0 / 2.0,
    1.0,
];

/// To about 1e-4.
pub(super) struct Coarse;

impl Resolution for Coarse {
    const EDGE: f64 = 3.6;
    const LARGEST_RATIO: f64 = 20.0;
    const STRIPS: f64 = 4.5;

    /// With z = e^(−q/16) it is (1 − z⁸)/q, where 1 − z⁸ = (1 − z)(1 + z)(1 + z²)(1 + z⁴) and 1/z = 1 + yg with
    /// y = q/16 and g a few terms of its series: no exponential, no cancellation, within 4e-6.
    fn damped(q: f64) -> f64 {
        let y = q * (1.0 / 16.0);
        let g = 1.0 + y * (1.0 / 2.0 + y * (1.0 / 6.0 + y * (1.0 / 24.0)));
        let z = 1.0 / (1.0 + y * g);
        let square = z * z;
        (1.0 / 16.0) * g * z * (1.0 + z) * (1.0 + square) * (1.0 + square * square)
    }
}

/// A whole number of nodes: at least two, and never so many that odd arguments could hold up the caller.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "clamped first; NaN gives 0"
)]
pub(super) fn whole(nodes: f64) -> usize {
    nodes.ceil().clamp(2.0, 1000.0) as usize
}
