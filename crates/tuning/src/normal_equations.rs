//! The information in the shots about the unknowns, with the ends eliminated exactly.

use nalgebra::{DMatrix, DVector};

use crate::design::{self, Combination, Planar};
use crate::layout::Layout;
use crate::observation::{Kind, Observation, Observations};
use crate::{Scales, prior};

/// Precision matrix Λ and vector b of the unknowns θ: the posterior is N(Λ⁻¹ b, Λ⁻¹).
///
/// # Formula
/// A reading of one coordinate is y = e + z·θ + ε with ε ~ N(0, 1/w); the end's own e ~ N(0, 1/p) is common to its
/// shots. Integrating e out leaves, summed over ends and coordinates,
/// ```text
/// Λ = Λ₀ + Σ w z zᵀ − (Σ w z)(Σ w z)ᵀ / (p + Σ w)
/// b =      Σ w z y  − (Σ w z)(Σ w y)  / (p + Σ w)
/// ```
/// # Source
/// Sherman and Morrison (1950), Annals of Mathematical Statistics 21, 124 (rank-one update of an inverse).
pub struct NormalEquations {
    /// Λ.
    pub precision: DMatrix<f64>,
    /// b.
    pub vector: DVector<f64>,
    /// Σ w y² − (Σ w y)² / (p + Σ w), what the readings weigh by themselves.
    pub sum_of_squares: f64,
    /// Σ ln w − ln((p + Σ w) / p), the log determinant of the readings' own precision.
    pub log_det: f64,
    /// How many coordinates were read.
    pub readings: usize,
}

/// One coordinate read.
struct Reading {
    row: Combination,
    value: f64,
    weight: f64,
}

impl NormalEquations {
    /// Gathers all that was observed.
    pub fn gather(seen: &Observations, weights: &[f64], layout: &Layout, scales: &Scales) -> Self {
        let mut all = Self {
            precision: prior::precision(seen, layout, scales),
            vector: DVector::zeros(layout.len()),
            sum_of_squares: 0.0,
            log_det: 0.0,
            readings: 0,
        };
        let aim = scales.aim_mm.powi(-2);
        let frame = scales.frame_deg.powi(-2);
        let mut from = 0;
        for end in seen.shots.chunk_by(|one, next| one.end == next.end) {
            let weights = &weights[from..from + end.len()];
            from += end.len();
            for axis in 0..2 {
                let read = |shot: (&Observation, &f64)| hit(seen, layout, scales, shot, axis);
                all.add_end(aim, &end.iter().zip(weights).map(read).collect::<Vec<_>>());
                let read = |shot: (&Observation, &f64)| lean(seen, layout, scales, shot, axis);
                all.add_end(frame, &end.iter().zip(weights).filter_map(read).collect::<Vec<_>>());
            }
        }
        all
    }

    /// Adds one coordinate of one end, its own mean integrated out.
    fn add_end(&mut self, end_precision: f64, readings: &[Reading]) {
        let mut sum = Combination::default();
        let (mut sum_w, mut sum_wy) = (end_precision, 0.0);
        for Reading { row, value, weight } in readings {
            self.add_outer(row, *weight);
            for &(at, factor) in &row.0 {
                self.vector[at] += weight * factor * value;
                sum.0.push((at, weight * factor));
            }
            sum_w += weight;
            sum_wy += weight * value;
            self.sum_of_squares += weight * value * value;
            self.log_det += weight.ln();
        }
        self.readings += readings.len();
        let sum = merged(sum);
        self.add_outer(&sum, -1.0 / sum_w);
        for &(at, factor) in &sum.0 {
            self.vector[at] -= factor * sum_wy / sum_w;
        }
        self.sum_of_squares -= sum_wy * sum_wy / sum_w;
        self.log_det -= (sum_w / end_precision).ln();
    }

    /// Adds `weight` times the outer product of `row` with itself.
    fn add_outer(&mut self, row: &Combination, weight: f64) {
        for &(column, factor) in &row.0 {
            for &(at, other) in &row.0 {
                self.precision[(at, column)] += weight * factor * other;
            }
        }
    }
}

/// The same combination with each place named once.
fn merged(mut combination: Combination) -> Combination {
    combination.0.sort_unstable_by_key(|&(at, _)| at);
    combination.0.dedup_by(|next, kept| {
        let same = next.0 == kept.0;
        if same {
            kept.1 += next.1;
        }
        same
    });
    combination
}

/// One coordinate of a shot's hit.
fn hit(
    seen: &Observations,
    layout: &Layout,
    scales: &Scales,
    (shot, weight): (&Observation, &f64),
    axis: usize,
) -> Reading {
    let (mut planar, spread_mm) = match seen.lives[shot.life].kind {
        Kind::Bare => {
            (design::bare_hit(layout, shot.life, shot.bow, shot.mark_rad), scales.bare_mm)
        }
        Kind::Reference => (design::reference_hit(layout, shot.life), scales.reference_mm),
    };
    planar[axis].0.push((layout.sitting(shot.sitting) + axis, 1.0));
    let read_mm = shot.read_mm.unwrap_or(scales.read_mm) * shot.coarser;
    let stale = stale_mm2(seen, scales, shot);
    let variance = spread_mm * spread_mm / weight + read_mm * read_mm + stale;
    reading(planar, axis, shot.hit_mm[axis], variance)
}

/// One coordinate of a shot's lean, where it was read.
fn lean(
    seen: &Observations,
    layout: &Layout,
    scales: &Scales,
    (shot, weight): (&Observation, &f64),
    axis: usize,
) -> Option<Reading> {
    let lean_deg = shot.lean_deg?;
    let slope = scales.lean_per_miss_deg_per_mm;
    let (planar, spread_deg) = match seen.lives[shot.life].kind {
        Kind::Bare => (
            design::bare_lean(layout, shot.life, shot.bow, shot.mark_rad, slope),
            scales.bare_lean_deg,
        ),
        Kind::Reference => (design::reference_lean(layout, shot.life), scales.reference_lean_deg),
    };
    let read_deg = shot.read_lean_deg.unwrap_or(scales.read_lean_deg) * shot.coarser;
    let stale = stale_mm2(seen, scales, shot) * slope * slope;
    let variance = spread_deg * spread_deg / weight + read_deg * read_deg + stale;
    Some(reading(planar, axis, lean_deg[axis], variance))
}

/// The variance by which the part that turns twice may have changed since the shot, with the bow.
fn stale_mm2(seen: &Observations, scales: &Scales, shot: &Observation) -> f64 {
    let changes = (seen.bow_changes_mm.len() - shot.bow) as f64;
    let change_mm = scales.stiff_mm * scales.stiff_change_share;
    match seen.lives[shot.life].kind {
        Kind::Bare => changes * change_mm * change_mm,
        Kind::Reference => 0.0,
    }
}

fn reading([x, y]: Planar, axis: usize, value: f64, variance: f64) -> Reading {
    let row = merged(if axis == 0 { x } else { y });
    Reading { row, value, weight: 1.0 / variance }
}
