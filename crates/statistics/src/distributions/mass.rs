//! The terms of Poisson and beta distributions, without the cancellation of large logarithms.

use std::f64::consts::TAU;

/// λˣ e^(−λ)/Γ(x + 1), for x ≥ 0 that need not be whole, to 1e-13 of itself where it is above 1e-300 and x below 10⁵ (to
/// 1e-11 below 10⁷).
///
/// # Formula
/// e^(−δ(x) − D(x, λ))/√(2πx), δ Stirling's error and D the deviance.
///
/// # Source
/// C. Loader, 2000, Fast and accurate computation of binomial probabilities (from memory).
pub(super) fn poisson(x: f64, lambda: f64) -> f64 {
    if x == 0.0 {
        return (-lambda).exp();
    }
    (-stirling_error(x) - deviance(x, lambda)).exp() / (TAU * x).sqrt()
}

/// xᵃ yᵇ/B(a, b), y = 1 − x, in the same way.
pub(super) fn beta(a: f64, b: f64, x: f64, y: f64) -> f64 {
    let n = a + b;
    let error = stirling_error(n) - stirling_error(a) - stirling_error(b);
    let far = deviance(a, n * x) + deviance(b, n * y);
    (error - far).exp() * (a / n * b / TAU).sqrt()
}

/// ln Γ(x + 1) − ln(√(2πx) xˣ e^(−x)).
fn stirling_error(x: f64) -> f64 {
    if x < 15.0 {
        return libm::lgamma(x + 1.0) - (x + 0.5) * x.ln() + x - 0.5 * TAU.ln();
    }
    // Stirling's series; what is left out is below 1e-17.
    let terms =
        [-691.0 / 360_360.0, 1.0 / 1188.0, -1.0 / 1680.0, 1.0 / 1260.0, -1.0 / 360.0, 1.0 / 12.0];
    terms.iter().fold(0.0, |sum, term| sum / (x * x) + term) / x
}

/// x ln(x/λ) + λ − x, which is half of what the two differ by in standard deviations, squared.
fn deviance(x: f64, lambda: f64) -> f64 {
    let off = (lambda - x) / x;
    if off.abs() < 0.5 { x * (off - off.ln_1p()) } else { x * (x / lambda).ln() + lambda - x }
}
