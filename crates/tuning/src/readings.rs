//! The coordinates that were read, as equations in the unknowns, end by end.

use nalgebra::Vector2;

use crate::Scales;
use crate::design::{self, Combination, Planar};
use crate::layout::Layout;
use crate::learn::Build;
use crate::normal_equations::NormalEquations;
use crate::observation::{Kind, Observation, Observations};
use crate::posterior::Posterior;
use crate::prior::Prior;

/// What a coordinate is of.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Of {
    /// A hit, mm.
    Hit,
    /// A lean, degrees.
    Lean,
}

/// One coordinate of one end: its readings share a mean of their own, normal about zero.
#[derive(Clone, Debug)]
pub struct Coordinate {
    /// What it is of.
    pub of: Of,
    /// The precision of the end's own mean.
    pub end_precision: f64,
    /// What was read.
    pub readings: Vec<Reading>,
}

/// One coordinate of one shot: value = end's mean + row·θ + noise of precision `weight`.
#[derive(Clone, Debug)]
pub struct Reading {
    /// Which shot, counted in [`Observations::shots`].
    pub shot: usize,
    /// How the unknowns make it.
    pub row: Combination,
    /// What was read.
    pub value: f64,
    /// The share of the noise that is the shot's own scatter; the rest is reading.
    pub scatter_share: f64,
    /// The precision of the noise.
    pub weight: f64,
}

/// How much a shot counts: the precision of its scatter as a multiple of the usual.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ShotWeight {
    /// Of its hit.
    pub hit: f64,
    /// Of its lean.
    pub lean: f64,
}

impl ShotWeight {
    /// Counts in full.
    pub const FULL: Self = Self { hit: 1.0, lean: 1.0 };
}

/// Everything that the rows are built from.
pub struct Reader<'a> {
    pub seen: &'a Observations,
    pub layout: &'a Layout,
    pub scales: &'a Scales,
    pub weights: &'a [ShotWeight],
    /// For each life, how it is built.
    pub builds: &'a [Build],
}

impl Reader<'_> {
    /// All coordinates of all ends.
    pub fn coordinates(&self) -> Vec<Coordinate> {
        let shots: Vec<usize> = (0..self.seen.shots.len()).collect();
        let same_end =
            |&one: &usize, &next: &usize| self.seen.shots[one].end == self.seen.shots[next].end;
        shots.chunk_by(same_end).flat_map(|end| self.end(end)).collect()
    }

    /// All coordinates, and the posterior that follows from them.
    pub fn solve(&self) -> (Vec<Coordinate>, Posterior) {
        let coordinates = self.coordinates();
        let equations = NormalEquations::gather(&coordinates, self.layout.len());
        let posterior = self.posterior(&equations, self.scales);
        (coordinates, posterior)
    }

    /// What all coordinates say of the unknowns.
    pub fn equations(&self) -> NormalEquations {
        NormalEquations::gather(&self.coordinates(), self.layout.len())
    }

    /// The posterior where the unknowns, before the first shot, were as `scales` say.
    pub fn posterior(&self, equations: &NormalEquations, scales: &Scales) -> Posterior {
        let prior = Prior::of(self.seen, self.layout, scales, self.builds);
        Posterior::of(self.layout.clone(), prior, equations)
    }

    fn end(&self, shots: &[usize]) -> [Coordinate; 4] {
        let Scales { aim_mm, frame_deg, .. } = *self.scales;
        let hits = along_axes(shots.iter().map(|&shot| self.hit(shot)));
        let leans = along_axes(shots.iter().filter_map(|&shot| self.lean(shot)));
        let [hit_x, hit_y] = hits.map(|readings| (Of::Hit, readings));
        let [lean_x, lean_y] = leans.map(|readings| (Of::Lean, readings));
        [(hit_x, aim_mm[0]), (hit_y, aim_mm[1]), (lean_x, frame_deg), (lean_y, frame_deg)].map(
            |((of, readings), end_sd)| Coordinate { of, end_precision: end_sd.powi(-2), readings },
        )
    }

    fn hit(&self, at: usize) -> [Reading; 2] {
        let shot = &self.seen.shots[at];
        let (mut planar, spread_mm) = match self.seen.kind_of(shot) {
            Kind::Bare => (
                design::bare_hit(self.layout, shot.life, shot.bow, shot.mark_rad),
                self.scales.bare_mm,
            ),
            Kind::Reference => {
                (design::reference_hit(self.layout, shot.life), self.scales.reference_mm)
            }
        };
        for (axis, row) in planar.iter_mut().enumerate() {
            row.0.push((self.layout.sitting(shot.sitting) + axis, 1.0));
        }
        let read_mm = shot.read_mm.unwrap_or(self.scales.read_mm) * shot.coarser;
        let scatter = self.scales.along_axes().map(|wider| {
            let spread_mm = spread_mm * wider;
            spread_mm * spread_mm / self.weights[at].hit
        });
        readings(at, planar, shot.hit_mm, scatter, read_mm * read_mm + self.stale_mm2(shot))
    }

    fn lean(&self, at: usize) -> Option<[Reading; 2]> {
        let shot = &self.seen.shots[at];
        let lean_deg = shot.lean_deg?;
        let slope = self.scales.lean_per_miss_deg_per_mm;
        let (planar, spread_deg) = match self.seen.kind_of(shot) {
            Kind::Bare => (
                design::bare_lean(self.layout, shot.life, shot.bow, shot.mark_rad, slope),
                self.scales.bare_lean_deg,
            ),
            Kind::Reference => {
                (design::reference_lean(self.layout, shot.life), self.scales.reference_lean_deg)
            }
        };
        let read_deg = shot.read_lean_deg.unwrap_or(self.scales.read_lean_deg) * shot.coarser;
        let scatter = [spread_deg * spread_deg / self.weights[at].lean; 2];
        let stale = self.stale_mm2(shot) * slope * slope;
        Some(readings(at, planar, lean_deg, scatter, read_deg * read_deg + stale))
    }

    /// The variance by which the part that turns twice may have changed since the shot, with the bow.
    fn stale_mm2(&self, shot: &Observation) -> f64 {
        let changes = (self.seen.bow_changes_mm.len() - shot.bow) as f64;
        let change_mm = self.scales.stiff_mm * self.scales.stiff_change_share;
        match self.seen.kind_of(shot) {
            Kind::Bare => changes * change_mm * change_mm,
            Kind::Reference => 0.0,
        }
    }
}

/// What was read along the two axes, each by itself.
fn along_axes(readings: impl Iterator<Item = [Reading; 2]>) -> [Vec<Reading>; 2] {
    let (x, y) = readings.map(|[x, y]| (x, y)).unzip();
    [x, y]
}

fn readings(
    shot: usize,
    [x, y]: Planar,
    values: Vector2<f64>,
    [scatter_x, scatter_y]: [f64; 2],
    read: f64,
) -> [Reading; 2] {
    [(x, values.x, scatter_x), (y, values.y, scatter_y)].map(|(row, value, scatter)| {
        let variance = scatter + read;
        let (scatter_share, weight) = (scatter / variance, 1.0 / variance);
        Reading { shot, row: row.merged(), value, scatter_share, weight }
    })
}

impl Coordinate {
    /// Σ w z and Σ w y over the readings, and p + Σ w.
    pub fn sums(&self) -> (Combination, f64, f64) {
        let mut rows = Combination::default();
        let (mut values, mut weights) = (0.0, self.end_precision);
        for Reading { row, value, weight, .. } in &self.readings {
            rows.0.extend(row.0.iter().map(|&(at, factor)| (at, weight * factor)));
            values += weight * value;
            weights += weight;
        }
        (rows.merged(), values, weights)
    }
}
