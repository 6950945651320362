//! The probability as a sum over strips across one principal axis: a few dozen nodes whatever the proportions.

use std::f64::consts::TAU;

use nalgebra::Vector2;

use super::principal_axes::PrincipalAxes;
use super::resolution::{Resolution, whole};
use crate::distributions::normal;

/// Below this ratio of standard deviation and radius an axis is taken as having no width.
const FLAT: f64 = 1e-13;

/// The probability by whichever principal axis needs fewer strips.
pub(super) fn probability<R: Resolution>(
    mean: Vector2<f64>,
    axes: PrincipalAxes,
    radius: f64,
) -> f64 {
    let major = Axis { mean: mean.dot(&axes.major), sd: axes.major_sd };
    let minor = Axis { mean: mean.dot(&axes.minor()), sd: axes.minor_sd };
    if major.sd <= FLAT * radius {
        return if mean.norm() <= radius { 1.0 } else { 0.0 };
    }
    if minor.sd <= FLAT * radius {
        return chord(major, radius * radius - minor.mean * minor.mean);
    }
    let across_minor = Strips::new(minor, major, radius, R::STRIPS);
    let across_major = Strips::new(major, minor, radius, R::STRIPS);
    if across_minor.count <= across_major.count {
        across_minor.sum(radius)
    } else {
        across_major.sum(radius)
    }
}

/// The normal distribution along one principal axis.
#[derive(Clone, Copy)]
struct Axis {
    mean: f64,
    sd: f64,
}

impl Axis {
    fn standardised(self, position: f64) -> f64 {
        (position - self.mean) / self.sd
    }
}

/// The probability of a chord of squared half length `half_squared` about 0.
fn chord(along: Axis, half_squared: f64) -> f64 {
    if half_squared < 0.0 {
        return 0.0;
    }
    let half = half_squared.sqrt();
    normal::between(along.standardised(-half), along.standardised(half))
}

/// Strips at r sin t on the axis `across` (mean μₐ, standard deviation σₐ), each a chord of half length r cos t on
/// the axis `along` (μₗ, σₗ).
///
/// # Formula
/// P = ∫ φ(y) (Φ(x₊) − Φ(x₋)) (r/σₐ) cos t dt over −π/2 ≤ t ≤ π/2, with y = (r sin t − μₐ)/σₐ and
/// x± = (±r cos t − μₗ)/σₗ, by the trapezoidal rule between the angles at which |y| reaches ρ.
///
/// The integrand vanishes at these angles and is even about ±π/2, so that the ends cost nothing. The step follows
/// from the fastest change of (x, y) on the way, r √(sin² t/σₗ² + cos² t/σₐ²).
struct Strips {
    across: Axis,
    along: Axis,
    from: f64,
    step: f64,
    count: usize,
}

impl Strips {
    fn new(across: Axis, along: Axis, radius: f64, fine: f64) -> Self {
        let reach = fine * across.sd;
        let lowest = ((across.mean - reach) / radius).clamp(-1.0, 1.0);
        let highest = ((across.mean + reach) / radius).clamp(-1.0, 1.0);
        let rate = |sin: f64| {
            let sin_squared = sin * sin;
            radius
                * (sin_squared / along.sd.powi(2) + (1.0 - sin_squared) / across.sd.powi(2)).sqrt()
        };
        // The square of the rate is linear in sin²t: it is largest at an end of the range of sin²t.
        let widest = lowest.abs().max(highest.abs());
        let narrowest = lowest.max(-highest).max(0.0);
        let fastest = rate(widest).max(rate(narrowest));
        let (from, to) = (lowest.asin(), highest.asin());
        let count = whole(fine * ((to - from) / TAU * fastest).max(1.0));
        Self { across, along, from, step: (to - from) / count as f64, count }
    }

    fn sum(&self, radius: f64) -> f64 {
        let mut sum = 0.0;
        for strip in 1..self.count {
            let (sin, cos) = (self.from + self.step * strip as f64).sin_cos();
            let y = self.across.standardised(radius * sin);
            let half = radius * cos;
            let inside =
                normal::between(self.along.standardised(-half), self.along.standardised(half));
            sum += (-0.5 * y * y).exp() * cos * inside;
        }
        sum * self.step * radius / (self.across.sd * TAU.sqrt())
    }
}
