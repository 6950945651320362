//! What all other shots say of a few.

use nalgebra::{DMatrix, DVector, Vector2};

use crate::Scales;
use crate::evidence::{Evidence, Rows, Told};
use crate::observation::Kind;

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
    noise: Vec<Noise>,
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
        let known = evidence.covariance(&[&own]);
        let noise = DVector::from_iterator(n, noise);
        let taken_out = (DMatrix::from_diagonal(&noise) - known).try_inverse()?;
        let noise = shots.iter().enumerate().flat_map(|one| Noise::of(evidence, one)).collect();
        Some(Self { evidence, shots, own, noise, taken_out })
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

    /// How likely a hit is to lie so far or farther from where all other shots say, were the first shot as `told` and
    /// its hit `moved` by so much: a share of the shots flies far.
    ///
    /// # Formula
    /// With d the distance in standard deviations of a usual shot and d′ in those of one that flies far, and ε the
    /// share of these: `(1 − ε) exp(−d²/2) + ε exp(−d′²/2)`, since d² of two coordinates is χ² with 2 degrees.
    pub fn tail_of_hit(&self, told: Told, moved: Vector2<f64>) -> Option<f64> {
        let (off, known) = self.expected(&[told]);
        let off = off.fixed_view::<2, 1>(0, 0) + moved;
        let tail = |flies: bool| {
            let spread = known.clone() + self.noise(|_| flies);
            let spread = spread.fixed_view::<2, 2>(0, 0).into_owned().cholesky()?;
            Some((-0.5 * off.dot(&spread.solve(&off))).exp())
        };
        let far = self.far().first().copied()?;
        Some((1.0 - far) * tail(false)? + far * tail(true)?)
    }

    /// Where all other shots say that the hit of the first shot should lie, as an offset from where it does, mm.
    pub fn off_of_hit(&self, told: Told) -> Vector2<f64> {
        let (off, _) = self.expected(&[told]);
        -off.fixed_view::<2, 1>(0, 0)
    }

    /// What was read less what is expected, and the covariance of what is expected.
    pub fn expected(&self, told: &[Told]) -> (DVector<f64>, DMatrix<f64>) {
        let other = self.evidence.rows(self.shots, told);
        let n = other.off.len();
        let all = self.evidence.covariance(&[&self.own, &other]);
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

    /// The covariance of the noise, where some of the shots fly far.
    fn noise(&self, flies: impl Fn(usize) -> bool) -> DMatrix<f64> {
        let variances = self.noise.iter().map(|one| {
            let wider = if flies(one.shot) { FARTHER } else { 1.0 };
            one.scatter * wider * wider + one.read
        });
        DMatrix::from_diagonal(&DVector::from_iterator(self.noise.len(), variances))
    }
}

/// The variances that make the noise of one coordinate.
struct Noise {
    /// Whose it is: a place in [`LeftOut::shots`].
    shot: usize,
    /// Of the shot's own scatter, were it one of the usual.
    scatter: f64,
    /// Of reading it.
    read: f64,
}

impl Noise {
    /// Of everything that was read of the shot in this place.
    fn of(evidence: &Evidence<'_>, (place, &shot): (usize, &usize)) -> Vec<Self> {
        let Scales { bare_mm, bare_lean_deg, reference_mm, reference_lean_deg, .. } =
            *evidence.scales;
        let (hit_mm, lean_deg) = match evidence.seen.kind_of(&evidence.seen.shots[shot]) {
            Kind::Bare => (bare_mm, bare_lean_deg),
            Kind::Reference => (reference_mm, reference_lean_deg),
        };
        let readings = evidence.readings(&[shot]).into_iter();
        let [x_mm, y_mm] = evidence.scales.along_axes().map(|along| along * hit_mm);
        let noise = readings.zip([x_mm, y_mm, lean_deg, lean_deg]);
        noise
            .map(|(reading, sd)| {
                let read = (1.0 - reading.scatter_share) / reading.weight;
                Self { shot: place, scatter: sd * sd, read }
            })
            .collect()
    }
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
