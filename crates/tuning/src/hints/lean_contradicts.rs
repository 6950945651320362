//! A shaft whose tail leans otherwise than its hits ask for.

use nalgebra::{Matrix2, Vector2};
use quarterturn_geometry::Lean;
use quarterturn_statistics::distributions::ChiSquared;

use super::hint::Hint;
use crate::design;
use crate::evidence::{Evidence, Told};

/// A lean so far off is met in one shaft of so many that have nothing.
const SHAFTS_FOR_A_CHANCE: f64 = 2000.0;

/// Fewer shots with a lean may be one that was misread.
const FEWEST: usize = 3;

/// The lean that goes with a miss may itself be off by this share of it: it grows no further for a large one.
const RELATION_SHARE: f64 = 0.4;

/// Whether what a shaft's lean differs from the relation is more than the relation allows.
///
/// # Formula
/// With P what the relation allows and K what is not known after the shots, the expected difference m is itself
/// normal with covariance P − K, so that mᵀ (P − K)⁻¹ m is χ² with two degrees of freedom.
pub fn lean_contradicts(evidence: &Evidence<'_>, shots: &[usize]) -> Option<Hint> {
    let leaning: Vec<_> =
        shots.iter().filter(|&&shot| evidence.seen.shots[shot].lean_deg.is_some()).collect();
    let last = **leaning.last()?;
    if leaning.len() < FEWEST {
        return None;
    }
    let told = evidence.as_entered(last);
    let posterior = &evidence.posterior;
    let differs =
        posterior.miss(&design::lean_discrepancy(&posterior.layout, told.life, told.mark_rad));
    let (mean, known) =
        (Vector2::new(differs.mean.x_mm, differs.mean.y_mm), differs.covariance_mm2);
    let told_of = allowed(evidence, last, told) - known;
    let distance = mean.dot(&(told_of.try_inverse()? * mean));
    let chance = ChiSquared::new(2.0).ok()?.upper_tail(distance);
    (told_of.m11 > 0.0 && chance < 1.0 / SHAFTS_FOR_A_CHANCE).then(|| Hint::LeanContradicts {
        shaft: evidence.seen.lives[told.life].name.clone(),
        differs: Lean::from_degrees(mean.x, mean.y),
        sd_deg: (known.trace() / 2.0).sqrt(),
        index: evidence.seen.shots[last].index,
        shots: leaning.len(),
    })
}

/// What the relation allows a lean to differ, deg².
fn allowed(evidence: &Evidence<'_>, shot: usize, told: Told) -> Matrix2<f64> {
    let (scales, posterior) = (evidence.scales, &evidence.posterior);
    let bow = evidence.seen.shots[shot].bow;
    let hit = design::bare_hit(&posterior.layout, told.life, bow, told.mark_rad);
    let miss_mm = posterior.miss(&hit).mean.length().mm();
    let bends_deg = RELATION_SHARE * scales.lean_per_miss_deg_per_mm * miss_mm;
    // Three parts of a lean differ, each by as much.
    Matrix2::identity() * (3.0 * scales.discrepancy_deg.powi(2) + bends_deg.powi(2))
}
