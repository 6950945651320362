//! What a few more shots of a shaft at an index are expected to be worth.

use nalgebra::{Cholesky, Matrix2, Matrix2x4, Matrix4, Vector4};
use quarterturn_geometry::{Index, Offset};

use crate::design::{self, Planar};
use crate::judge::{Candidate, Judge};
use crate::{Miss, Scales};

/// Points of the standard normal in four dimensions, each with its mirror image, that stand for what the shots
/// may show: the first eight points of the additive recurrence of Roberts (2018), mapped by the normal quantile.
/// They are scaled to unit variance in each direction.
const SHOWN: [[f64; 4]; 8] = [
    [-0.10, 1.41, 0.42, -0.62],
    [1.20, -0.32, 1.51, 0.33],
    [-1.49, 0.37, -0.18, 1.62],
    [0.49, -1.42, 0.80, -0.09],
    [0.15, 0.78, -1.61, 0.75],
    [-0.66, -0.82, -0.62, -1.41],
    [1.69, 0.05, -0.03, -0.79],
    [0.83, 1.71, 0.92, 1.21],
];

/// So many further shots at one index are looked at: one rarely decides, and what is worth three is worth one.
const SHOTS: [usize; 3] = [1, 2, 4];

/// What looking ahead says of one shaft at one index.
#[derive(Clone, Copy, Debug)]
pub struct Prospect {
    /// The index to shoot it at.
    pub index: Index,
    /// Expected right verdicts for each shot.
    pub gain_per_shot: f64,
}

impl Judge<'_> {
    /// The index at which a shot of this shaft is expected to be worth most.
    pub fn prospect(&self, candidate: &Candidate<'_>, leans_are_read: bool) -> Option<Prospect> {
        let functionals: Vec<Planar> = candidate
            .predictions
            .iter()
            .map(|at| self.functional(candidate.life, at.index))
            .collect();
        let now = self.worth(candidate.promise().within);
        let tried = candidate.predictions.iter().map(|at| {
            let telling = self.telling(candidate, at.index, &functionals, leans_are_read);
            let turned = candidate.standing.index_now.turn_to(at.index).degrees() != 0.0;
            let turn_cost = if turned { self.policy.turn_cost_shots } else { 0.0 };
            let best = SHOTS.iter().map(|&shots| {
                let gain = self.expected_worth(candidate, &telling, shots) - now;
                gain / (shots as f64 + turn_cost)
            });
            Prospect { index: at.index, gain_per_shot: best.fold(0.0, f64::max) }
        });
        tried.max_by(|one, other| one.gain_per_shot.total_cmp(&other.gain_per_shot))
    }

    /// What a shaft is worth that is inside the tolerance with probability `within`: the better of keeping it,
    /// retiring it and leaving it open, in right verdicts at the prices of the policy.
    fn worth(&self, within: f64) -> f64 {
        let keep = (within - self.policy.keep_at) / (1.0 - self.policy.keep_at);
        let retire = (self.policy.retire_at - within) / self.policy.retire_at;
        keep.max(retire).max(0.0)
    }

    /// How a shot at `index` bears on the miss at every index.
    fn telling(
        &self,
        candidate: &Candidate<'_>,
        index: Index,
        functionals: &[Planar],
        leans_are_read: bool,
    ) -> Telling {
        let shown = self.shown(candidate.life, index);
        let cross = |one: &Planar| {
            Matrix2x4::from_fn(|row, column| {
                let (other, axis) = (&shown[column / 2], column % 2);
                self.posterior.covariance_of(one, other, row, axis)
            })
        };
        let known = Matrix4::from_fn(|row, column| {
            let (one, other) = (&shown[row / 2], &shown[column / 2]);
            self.posterior.covariance_of(one, other, row % 2, column % 2)
        });
        let noise = self.shot_noise(leans_are_read);
        Telling { bears: functionals.iter().map(cross).collect(), known, noise }
    }

    /// What a shot at `index` shows beside the reference: hit, then lean.
    fn shown(&self, life: usize, index: Index) -> [Planar; 2] {
        let layout = &self.posterior.layout;
        let mark_rad = index.angle().radians();
        let slope = self.scales.lean_per_miss_deg_per_mm;
        let hit = design::bare_hit(layout, life, self.bow, mark_rad);
        let lean = design::bare_lean(layout, life, self.bow, mark_rad, slope);
        [design::from_references(hit, layout, &self.references), lean]
    }

    /// The variances of what one shot shows beside a reference of the same end: mm², mm², deg², deg².
    fn shot_noise(&self, leans_are_read: bool) -> Vector4<f64> {
        let Scales { bare_mm, reference_mm, read_mm, aim_mm, .. } = *self.scales;
        let Scales { bare_lean_deg, reference_lean_deg, read_lean_deg, frame_deg, .. } = *self.scales;
        let beside = |own: f64, reference: f64, read: f64, end: f64| {
            let of_end = (end.powi(-2) + 1.0 / (reference * reference + read * read)).recip();
            own * own + read * read + of_end
        };
        let hit = beside(bare_mm, reference_mm, read_mm, aim_mm);
        let lean = beside(bare_lean_deg, reference_lean_deg, read_lean_deg, frame_deg);
        // A lean that is not read tells nothing.
        let lean = if leans_are_read { lean } else { f64::MAX.sqrt() };
        Vector4::new(hit, hit, lean, lean)
    }

    /// The expected worth of a shaft after so many shots.
    fn expected_worth(&self, candidate: &Candidate<'_>, telling: &Telling, shots: usize) -> f64 {
        let Some(after) = telling.after(candidate, shots) else { return 0.0 };
        let worth = |shown: Vector4<f64>| {
            let within = after.iter().map(|(miss, moves)| {
                let by = moves * shown;
                self.within_shifted(miss, Offset::new(by.x, by.y))
            });
            self.worth(within.fold(0.0, f64::max))
        };
        let all = SHOWN.map(|shown| {
            let shown = Vector4::from(shown);
            worth(shown) + worth(-shown)
        });
        all.into_iter().sum::<f64>() / (2 * SHOWN.len()) as f64
    }
}

/// How a shot bears on what is predicted.
struct Telling {
    /// Covariance of the miss at each index with what the shot shows.
    bears: Vec<Matrix2x4<f64>>,
    /// What is not known of what the shot shows on average.
    known: Matrix4<f64>,
    /// What a single shot scatters about that.
    noise: Vector4<f64>,
}

impl Telling {
    /// The miss at each index after so many shots, and how its mean moves with what they show.
    fn after(&self, candidate: &Candidate<'_>, shots: usize) -> Option<Vec<(Miss, Matrix2x4<f64>)>> {
        let shown = self.known + Matrix4::from_diagonal(&(self.noise / shots as f64));
        let root = Cholesky::new(shown)?.l().try_inverse()?;
        let after = candidate.predictions.iter().zip(&self.bears).map(|(at, bears)| {
            let moves = bears * root.transpose();
            let covariance_mm2: Matrix2<f64> = at.miss.covariance_mm2 - moves * moves.transpose();
            (Miss { mean: at.miss.mean, covariance_mm2 }, moves)
        });
        Some(after.collect())
    }
}
