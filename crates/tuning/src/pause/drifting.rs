//! A reference that drifts.

use nalgebra::Vector2;
use quarterturn_geometry::Offset;
use quarterturn_statistics::distributions::FisherF;
use quarterturn_statistics::{PlanarSample, PooledSpread};

use crate::evidence::Evidence;
use crate::observation::Kind;
use crate::{Pause, design};

/// Half an evening has at least so many ends.
const FEWEST: usize = 4;

/// The drift must be met by chance no oftener than this: it is asked after every end.
const BY_CHANCE: f64 = 0.003;

/// Whether the reference hit elsewhere in the last half of an evening's ends than in the first.
///
/// # Formula
/// With x̄₁, x̄₂ the mean hits of n₁ and n₂ ends and s² their pooled variance per axis,
/// n₁ n₂ / (n₁ + n₂) |x̄₂ − x̄₁|² / (2 s²) is distributed as F with 2 and 2 (n₁ + n₂ − 2) degrees of freedom.
pub fn drifting(evidence: &Evidence<'_>, shots: &[usize]) -> Option<Pause> {
    let hits = reference_hits(evidence, shots);
    let half = hits.len() / 2;
    if half < FEWEST {
        return None;
    }
    let halves = [&hits[..half], &hits[hits.len() - half..]].map(<[_]>::to_vec);
    let [first, last] = halves.map(PlanarSample::new);
    let (first, last) = (first.ok()?, last.ok()?);
    let moved_mm = last.centroid() - first.centroid();
    let pooled = PooledSpread::of([&first, &last]);
    let below = pooled.degrees_of_freedom as f64;
    // Both halves have as many ends: n₁ n₂ / (n₁ + n₂) is half of that.
    let ratio = half as f64 / 4.0 * moved_mm.norm_squared() / (pooled.sum_of_squares / below);
    let drifts = FisherF::new(2.0, below).ok()?.upper_tail(ratio) < BY_CHANCE;
    let moved = Offset::new(moved_mm.x, moved_mm.y);
    drifts.then_some(Pause::Drifting { moved, first: half, last: half })
}

/// Where the references hit in each end, each less what it differs from the others.
fn reference_hits(evidence: &Evidence<'_>, shots: &[usize]) -> Vec<Vector2<f64>> {
    let (seen, posterior) = (evidence.seen, &evidence.posterior);
    let is_reference = |&at: &usize| seen.kind_of(&seen.shots[at]) == Kind::Reference;
    let references: Vec<usize> = shots.iter().copied().filter(is_reference).collect();
    let own_mm = |life| {
        let own = design::reference_hit(&posterior.layout, life);
        design::value(&own, |at| posterior.mean[at])
    };
    let ends = references.chunk_by(|&one, &next| seen.shots[one].end == seen.shots[next].end);
    ends.map(|end| {
        let hits = end.iter().map(|&at| seen.shots[at].hit_mm - own_mm(seen.shots[at].life));
        hits.sum::<Vector2<f64>>() / end.len() as f64
    })
    .collect()
}
