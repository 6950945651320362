//! How finely the two sums are taken.

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
    const LARGEST_RATIO: f64 = 10.0;
    const STRIPS: f64 = 8.2;

    fn damped(q: f64) -> f64 {
        if q < 1e-3 {
            // The difference would cancel: its series, to q³.
            0.5 - q * (1.0 / 8.0 - q * (1.0 / 48.0 - q * (1.0 / 384.0)))
        } else {
            (1.0 - (-0.5 * q).exp()) / q
        }
    }
}

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
