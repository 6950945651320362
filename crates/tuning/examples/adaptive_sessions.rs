//! How many adaptive sessions a second the linear core does: a benchmark, beside the same work in another language.
//!
//! A session has twelve arrows; each axis of an arrow is y = φ(k)·β + noise with φ = (1, cos, sin, cos 2, sin 2) of the
//! position k of eight, β ~ N(0, diag τ²), τ = 12, 8, 8, 3, 3 mm, noise 15 mm. Each of 24 shots of an arrow goes where its
//! predictive variance is largest, and its own 5 × 5 covariance is updated by rank one. Then the arrow is set where it is
//! predicted nearest to the middle. All is checked by what is printed: the share of 95 % intervals that hold β, and the mean
//! squared distance before and after, mm².
//!
//! ```sh
//! cargo run --release -p quarterturn-tuning --example adaptive_sessions -- 10000
//! ```
#![allow(clippy::print_stdout, reason = "it is run by hand, to be read")]

use std::array::from_fn;
use std::f64::consts::FRAC_PI_4;
use std::time::Instant;

use nalgebra::{SMatrix, SVector};
use rand::SeedableRng;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

type Coefficients = SVector<f64, 5>;
type Covariance = SMatrix<f64, 5, 5>;

const ARROWS: usize = 12;
const POSITIONS: usize = 8;
const SHOTS: usize = 24;
const NOISE_MM: f64 = 15.0;
const SIZES_MM: [f64; 5] = [12.0, 8.0, 8.0, 3.0, 3.0];
/// The 0.975 point of the normal.
const NINETY_FIVE_PERCENT: f64 = 1.959_963_984_540_054;

/// What all arrows came to.
#[derive(Default)]
struct Sums {
    arrows: f64,
    covered: f64,
    before_mm2: f64,
    after_mm2: f64,
}

fn main() {
    let sessions = std::env::args().nth(1).and_then(|count| count.parse().ok()).unwrap_or(10_000);
    let begun = Instant::now();
    let mut random = Pcg64::seed_from_u64(7);
    let positions = positions();
    let mut sums = Sums::default();
    for _ in 0..sessions * ARROWS {
        sums.add(&positions, &mut random);
    }
    let took = begun.elapsed().as_secs_f64();
    println!(
        "{{\"sessions\": {sessions}, \"compute_s\": {took:.4}, \"sessions_per_s\": {:.0}, \"coverage95\": {:.5}, \
         \"mean_sq_before\": {:.1}, \"mean_sq_after\": {:.1}}}",
        sessions as f64 / took,
        sums.covered / (10.0 * sums.arrows),
        sums.before_mm2 / sums.arrows,
        sums.after_mm2 / sums.arrows,
    );
}

fn positions() -> [Coefficients; POSITIONS] {
    from_fn(|place| {
        let (sin, cos) = (place as f64 * FRAC_PI_4).sin_cos();
        let (sin2, cos2) = (2.0 * place as f64 * FRAC_PI_4).sin_cos();
        Coefficients::from([1.0, cos, sin, cos2, sin2])
    })
}

fn normal(random: &mut Pcg64) -> f64 {
    StandardNormal.sample(random)
}

impl Sums {
    /// Shoots one arrow.
    fn add(&mut self, positions: &[Coefficients; POSITIONS], random: &mut Pcg64) {
        let sizes = Coefficients::from(SIZES_MM);
        let truth: [Coefficients; 2] =
            from_fn(|_| sizes.component_mul(&Coefficients::from_fn(|_, _| normal(random))));
        let (known, covariance) = learned(positions, &truth, random);
        for (known, truth) in known.iter().zip(&truth) {
            let held = |at: usize| {
                (known[at] - truth[at]).abs() <= NINETY_FIVE_PERCENT * covariance[(at, at)].sqrt()
            };
            self.covered += (0..5).filter(|&at| held(at)).count() as f64;
        }
        let off = |of: &[Coefficients; 2], at: &Coefficients| {
            of.iter().map(|axis| axis.dot(at).powi(2)).sum::<f64>()
        };
        let nearest =
            positions.iter().min_by(|one, other| off(&known, one).total_cmp(&off(&known, other)));
        self.arrows += 1.0;
        self.before_mm2 += off(&truth, &positions[0]);
        self.after_mm2 += nearest.map_or(0.0, |best| off(&truth, best));
    }
}

/// What is known of the two axes of an arrow after its shots, with the covariance that they share.
fn learned(
    positions: &[Coefficients; POSITIONS],
    truth: &[Coefficients; 2],
    random: &mut Pcg64,
) -> ([Coefficients; 2], Covariance) {
    let mut covariance =
        Covariance::from_diagonal(&Coefficients::from(SIZES_MM.map(|size| size * size)));
    let mut known = [Coefficients::zeros(); 2];
    let mut predictive: [f64; POSITIONS] =
        from_fn(|at| positions[at].dot(&(covariance * positions[at])));
    for _ in 0..SHOTS {
        let widest = (1..POSITIONS)
            .fold(0, |best, at| if predictive[at] > predictive[best] { at } else { best });
        let at = positions[widest];
        let bears = covariance * at;
        let shown = (at.dot(&bears) + NOISE_MM * NOISE_MM).recip();
        for (known, truth) in known.iter_mut().zip(truth) {
            let off = at.dot(truth) + NOISE_MM * normal(random) - at.dot(known);
            *known += bears * (off * shown);
        }
        covariance.ger(-shown, &bears, &bears, 1.0);
        // The same rank-one step, seen at each position.
        for (predictive, position) in predictive.iter_mut().zip(positions) {
            *predictive -= shown * position.dot(&bears).powi(2);
        }
    }
    (known, covariance)
}
