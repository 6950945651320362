//! What a few more shots of a shaft at an index are expected to be worth.

use nalgebra::{Cholesky, DMatrix, Matrix2, Matrix2x4, Matrix4, Vector4};
use quarterturn_geometry::{Index, Offset};

use crate::design::{self, Planar};
use crate::judge::{Candidate, Judge};
use crate::normal_points::normal_points;
use crate::{Miss, Scales};

/// So many further shots at one index are looked at: one rarely decides, and what is worth three is worth one.
const SHOTS: [usize; 3] = [1, 3, 8];

/// What looking ahead says of one shaft at one index.
#[derive(Clone, Copy, Debug)]
pub struct Prospect {
    /// The index to shoot it at.
    pub index: Index,
    /// Expected right verdicts for each shot.
    pub gain_per_shot: f64,
}

/// So many of the most promising indices are looked at...
const TRIED: usize = 4;

/// ... so far apart, because neighbours tell and promise the same.
const APART_DEG: f64 = 15.0;

impl Judge<'_> {
    /// The index at which a shot of this shaft is expected to be worth most; while it is open it is worth nothing yet.
    pub fn prospect(&self, candidate: &Candidate<'_>) -> Option<Prospect> {
        let shown = self.shown(candidate);
        let noise = self.shot_noise();
        let tried = promising(candidate).into_iter().map(|at| {
            let index = candidate.predictions[at].index;
            let telling = Telling::of(&shown, at, noise);
            let turned = candidate.standing.index_now.turn_to(index).degrees() != 0.0;
            let turn_cost = if turned { self.turn_cost_shots(candidate.standing) } else { 0.0 };
            let best = SHOTS.iter().map(|&shots| {
                self.expected_worth(candidate, &telling, shots) / (shots as f64 + turn_cost)
            });
            Prospect { index, gain_per_shot: best.fold(0.0, f64::max) }
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

    /// The covariance of what a shot shows at every index: hit, then lean, four rows an index.
    fn shown(&self, candidate: &Candidate<'_>) -> DMatrix<f64> {
        let slope = self.scales.lean_per_miss_deg_per_mm;
        let layout = &self.posterior.layout;
        let shown: Vec<Planar> = candidate
            .predictions
            .iter()
            .flat_map(|at| {
                let mark_rad = at.index.angle().radians();
                let lean = design::bare_lean(layout, candidate.life, self.bow, mark_rad, slope);
                [self.unmeasured_miss(candidate.life, mark_rad), lean]
            })
            .collect();
        self.joint_covariance(&shown)
    }

    /// The variances of what one shot shows beside a reference of the same end: mm², mm², deg², deg².
    fn shot_noise(&self) -> Vector4<f64> {
        let Scales { bare_mm, reference_mm, read_mm, aim_mm, .. } = *self.scales;
        let Scales { bare_lean_deg, reference_lean_deg, read_lean_deg, frame_deg, .. } =
            *self.scales;
        let beside = |own: f64, reference: f64, read: f64, end: f64| {
            let of_end = (end.powi(-2) + 1.0 / (reference * reference + read * read)).recip();
            own * own + read * read + of_end
        };
        let along = self.scales.along_axes();
        let hit = [0, 1].map(|axis| {
            beside(bare_mm * along[axis], reference_mm * along[axis], read_mm, aim_mm[axis])
        });
        let lean = beside(bare_lean_deg, reference_lean_deg, read_lean_deg, frame_deg);
        // A lean that is not read tells nothing.
        let lean = if self.leans_are_read { lean } else { f64::MAX.sqrt() };
        Vector4::new(hit[0], hit[1], lean, lean)
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
        let points = normal_points();
        points.map(worth).into_iter().sum::<f64>() / points.len() as f64
    }
}

/// The places of the indices that promise most, among them the best.
fn promising(candidate: &Candidate<'_>) -> Vec<usize> {
    let mut places: Vec<usize> = (0..candidate.predictions.len()).collect();
    let at = |place: usize| &candidate.predictions[place];
    let turn_deg = |one, other| at(one).index.turn_to(at(other).index).degrees().abs();
    places.sort_by(|&one, &other| at(other).within.total_cmp(&at(one).within));
    let mut tried: Vec<usize> = Vec::new();
    for place in places {
        let apart = tried.iter().all(|&other| turn_deg(place, other) >= APART_DEG);
        if apart && tried.len() < TRIED {
            tried.push(place);
        }
    }
    if !tried.contains(&candidate.best) {
        tried.push(candidate.best);
    }
    tried
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
    /// How a shot at the index in place `at` bears, from the covariance of what is shown at every index.
    fn of(shown: &DMatrix<f64>, at: usize, noise: Vector4<f64>) -> Self {
        let bears =
            (0..shown.nrows() / 4).map(|to| shown.fixed_view::<2, 4>(4 * to, 4 * at).into());
        Self {
            bears: bears.collect(),
            known: shown.fixed_view::<4, 4>(4 * at, 4 * at).into(),
            noise,
        }
    }

    /// The miss at each index after so many shots, and how its mean moves with what they show.
    fn after(
        &self,
        candidate: &Candidate<'_>,
        shots: usize,
    ) -> Option<Vec<(Miss, Matrix2x4<f64>)>> {
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
