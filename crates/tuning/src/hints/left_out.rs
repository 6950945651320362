//! What all other shots say of a few.

use nalgebra::{DMatrix, DVector};

use crate::evidence::{Evidence, Rows, Told};
use crate::observation::Kind;
use crate::readings::{Of, Reading};

/// So likely a shot flies far, whoever shoots...
const FLIES_FAR: f64 = 0.05;

/// ... and so many times as widely as the others; a shaft that does not repeat scatters about as widely.
const FARTHER: f64 = 3.0;

/// A few shots, and the posterior without them.
///
/// # Formula
/// With S the covariance of z·θ + e for what was read of the shots, R that of its noise, d what was read less what is
/// expected, and S′, S″, d′ the same for another telling z′ (S′ its covariance with z·θ + e): without these shots
/// ```text
/// y − z′·θ − e  has mean  d′ + S′ (R − S)⁻¹ d    and covariance  S″ + S′ (R − S)⁻¹ S′ᵀ
/// ```
/// # Source
/// The Sherman–Morrison–Woodbury identity with the sign of a term taken out: W. W. Hager, 1989, SIAM Review 31, 221.
pub struct LeftOut<'a> {
    evidence: &'a Evidence<'a>,
    shots: &'a [usize],
    own: Rows,
    /// (R − S)⁻¹.
    taken_out: DMatrix<f64>,
}

impl<'a> LeftOut<'a> {
    /// Takes `shots` out of the posterior.
    pub fn of(evidence: &'a Evidence<'a>, shots: &'a [usize]) -> Option<Self> {
        let told: Vec<_> = shots.iter().map(|&shot| evidence.as_entered(shot)).collect();
        let own = evidence.rows(shots, &told);
        let n = own.off.len();
        let noise = evidence.readings(shots).into_iter().map(|reading| 1.0 / reading.weight);
        let known = evidence.covariance([&own, &own]).view((0, 0), (n, n)).into_owned();
        let noise = DVector::from_iterator(n, noise);
        let taken_out = (DMatrix::from_diagonal(&noise) - known).try_inverse()?;
        Some(Self { evidence, shots, own, taken_out })
    }

    /// ln p(what was read | all other shots), were the shots as `told`.
    pub fn log_likelihood(&self, told: &[Told]) -> f64 {
        let (off, known) = self.expected(told);
        let far = self.far();
        let telling = (0..1_usize << self.shots.len()).map(|which| {
            let flies = |at: usize| which >> at & 1 == 1;
            let likely: f64 = far
                .iter()
                .enumerate()
                .map(|(at, far)| if flies(at) { far.ln() } else { (-far).ln_1p() })
                .sum();
            likely + log_density(&off, known.clone() + self.noise(flies))
        });
        log_sum(&telling.collect::<Vec<_>>())
    }

    /// How far the shots lie from what all others say of them, squared and in standard deviations, and in how many
    /// coordinates: were they as `told`, and none of them one that flies far.
    pub fn distance_squared(&self, told: &[Told]) -> Option<(f64, usize)> {
        let (off, known) = self.expected(told);
        let root = (known + self.noise(|_| false)).cholesky()?;
        Some((off.dot(&root.solve(&off)), off.len()))
    }

    /// What was read less what is expected, and the covariance of what is expected.
    pub fn expected(&self, told: &[Told]) -> (DVector<f64>, DMatrix<f64>) {
        let other = self.evidence.rows(self.shots, told);
        let n = other.off.len();
        let all = self.evidence.covariance([&self.own, &other]);
        let across = all.view((n, 0), (n, n));
        let moves = across * &self.taken_out;
        let off = other.off + &moves * &self.own.off;
        (off, all.view((n, n), (n, n)) + moves * across.transpose())
    }

    /// For each shot, how likely it is one of those that scatter widely.
    fn far(&self) -> Vec<f64> {
        let loose = |&shot: &usize| {
            self.evidence.loose_without(self.evidence.seen.shots[shot].life, self.shots)
        };
        self.shots.iter().map(|shot| FLIES_FAR + (1.0 - FLIES_FAR) * loose(shot)).collect()
    }

    fn noise(&self, flies: impl Fn(usize) -> bool) -> DMatrix<f64> {
        let of_shot = |(at, &shot): (usize, &usize)| {
            let wider = if flies(at) { FARTHER } else { 1.0 };
            let readings = self.evidence.readings(std::slice::from_ref(&self.shots[at]));
            let places = [Of::Hit, Of::Hit, Of::Lean, Of::Lean];
            let kind = self.evidence.seen.lives[self.evidence.seen.shots[shot].life].kind;
            let sd = places.map(|of| wider * self.scatter(kind, of));
            readings
                .into_iter()
                .zip(sd)
                .map(|(reading, sd)| sd * sd + read_only(reading))
                .collect::<Vec<_>>()
        };
        let variances: Vec<f64> = self.shots.iter().enumerate().flat_map(of_shot).collect();
        DMatrix::from_diagonal(&DVector::from_vec(variances))
    }

    fn scatter(&self, kind: Kind, of: Of) -> f64 {
        let scales = self.evidence.scales;
        match (kind, of) {
            (Kind::Bare, Of::Hit) => scales.bare_mm,
            (Kind::Bare, Of::Lean) => scales.bare_lean_deg,
            (Kind::Reference, Of::Hit) => scales.reference_mm,
            (Kind::Reference, Of::Lean) => scales.reference_lean_deg,
        }
    }
}

/// The part of a reading's variance that is not the shot's own scatter.
fn read_only(reading: &Reading) -> f64 {
    (1.0 - reading.scatter_share) / reading.weight
}

/// ln of the normal density, but for powers of 2π; next to nothing where the covariance is none.
fn log_density(off: &DVector<f64>, covariance: DMatrix<f64>) -> f64 {
    let Some(root) = covariance.cholesky() else { return f64::NEG_INFINITY };
    -0.5 * (root.ln_determinant() + off.dot(&root.solve(off)))
}

/// ln Σ exp.
pub fn log_sum(logs: &[f64]) -> f64 {
    let most = logs.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    if most == f64::NEG_INFINITY {
        return most;
    }
    most + logs.iter().map(|log| (log - most).exp()).sum::<f64>().ln()
}
