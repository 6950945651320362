//! How far a planar quantity lies from the origin at most: equivalence, not only difference.

use nalgebra::Vector2;

use crate::circle_probability::PrincipalAxes;
use crate::distributions::StudentT;
use crate::{Level, PlanarEstimate, StatisticError};

/// How far from the origin something was found, and how far it lies at most.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DistanceBound {
    /// The distance of the estimate.
    pub distance: f64,
    /// The distance that the truth keeps within with probability `level` at least.
    pub at_most: f64,
    /// The level, in (0, 1).
    pub level: f64,
    /// Number of observations.
    pub n: usize,
}

impl DistanceBound {
    /// Whether the truth is shown to lie within `distance`: it would be so called wrongly with probability 1 − level at most.
    #[must_use]
    pub fn is_within(self, distance: f64) -> bool {
        self.at_most <= distance
    }
}

impl PlanarEstimate {
    /// The distance from the origin with its upper bound at `level`: of a difference, whether two centres are equivalent.
    ///
    /// # Formula
    /// max over unit u of uᵀ value + t √(uᵀ V u), t the one-sided quantile of Student's distribution with ν degrees of freedom:
    /// the farthest point of the ellipse (μ − value)ᵀ V⁻¹ (μ − value) ≤ t². In principal axes, mᵢ along and aᵢ the half axes, its
    /// square is Σ (mᵢ λ/(λ − aᵢ²))² at the λ ≥ a₁² where Σ (mᵢ aᵢ/(λ − aᵢ²))² = 1.
    ///
    /// # Assumptions
    /// Those of the estimate. To say "within d" is to reject, for every direction, that the truth lies d or more that way: two
    /// one-sided tests in each direction. Where the truth lies d away one of these holds, so the level is kept; for
    /// an estimate much less uncertain than d it is reached.
    ///
    /// # Errors
    /// [`StatisticError::Distribution`] for degrees of freedom that cannot be computed with.
    ///
    /// # Source
    /// D. J. Schuirmann, 1987, A comparison of the two one-sided tests procedure, Journal of Pharmacokinetics and
    /// Biopharmaceutics 15, 657; intersections of tests: R. L. Berger, 1982, Multiparameter hypothesis testing and acceptance
    /// sampling, Technometrics 24, 295 (from memory).
    pub fn distance(&self, level: Level) -> Result<DistanceBound, StatisticError> {
        let t = StudentT::new(self.degrees_of_freedom)?.quantile(level).max(0.0);
        let axes = PrincipalAxes::of(&self.covariance);
        let middle = Vector2::new(axes.major.dot(&self.value), axes.minor().dot(&self.value));
        let half_axes = t * Vector2::new(axes.major_sd, axes.minor_sd);
        Ok(DistanceBound {
            distance: self.value.norm(),
            at_most: farthest(middle.abs(), half_axes),
            level: level.probability(),
            n: self.n,
        })
    }
}

/// How far the ellipse about `middle` with these `half_axes` along x and y, the first at least the second, reaches from the
/// origin.
fn farthest(middle: Vector2<f64>, half_axes: Vector2<f64>) -> f64 {
    let wider = half_axes.x * half_axes.x - half_axes.y * half_axes.y;
    let [along, across] = [middle.x * half_axes.x, middle.y * half_axes.y];
    // λ = a₁² + gap. The sum falls from above 1 to below it in this bracket, unless the middle lies on the shorter axis and so
    // near that the farthest points stand to both sides of it: then the gap is nought.
    let (mut lower, mut upper) = (along, along.hypot(across));
    if along <= 0.0 && across <= wider {
        upper = lower;
    }
    while upper - lower > 1e-15 * upper {
        let gap = 0.5 * (lower + upper);
        if Vector2::new(along / gap, across / (gap + wider)).norm_squared() > 1.0 {
            lower = gap;
        } else {
            upper = gap;
        }
        if gap <= f64::MIN_POSITIVE {
            break;
        }
    }
    let y = if across > 0.0 { (across / (upper + wider)).min(1.0) } else { 0.0 };
    let x = (1.0 - y * y).sqrt();
    (middle + half_axes.component_mul(&Vector2::new(x, y))).norm()
}
