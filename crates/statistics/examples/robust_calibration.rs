//! Simulates the robust estimate of clean samples, for the table in its `calibration.rs`:
//! `cargo run --release --example robust_calibration > fixtures/statistics/robust_calibration.csv`, some twenty minutes; numbers
//! after it do these sizes only.
//!
//! The factor and the stretch are found from the points kept, without the table. Draws are seeded by the size of the sample.
#![allow(clippy::print_stdout, reason = "this is what it is for")]

use std::error::Error;

use nalgebra::Vector2;
use quarterturn_statistics::{Coverage, MinimumCovarianceDeterminant, PlanarSample};
use rand::SeedableRng;
use rand_distr::{Distribution, StandardNormal};
use rand_pcg::Pcg64;

/// Sizes of samples beyond those that are all simulated, with how many of each.
const SIZES: [(usize, usize); 14] = [
    (36, 4000),
    (37, 4000),
    (43, 4000),
    (44, 4000),
    (51, 4000),
    (52, 4000),
    (60, 4000),
    (80, 4000),
    (100, 4000),
    (150, 4000),
    (200, 4000),
    (300, 4000),
    (500, 4000),
    (1000, 4000),
];

/// What 0.975 of a normal cloud fall short of: the consistency factor of the points kept.
const CONSISTENCY: f64 = 1.104_467_923_903;

/// The root of the determinant of the covariance of the points kept, and the squared distance of the farthest by it.
fn draw(n: usize, coverage: Coverage, random: &mut Pcg64) -> Result<[f64; 2], Box<dyn Error>> {
    let mut normal = || -> f64 { StandardNormal.sample(random) };
    let points = (0..n).map(|_| Vector2::new(normal(), normal())).collect();
    let sample = PlanarSample::new(points)?;
    let robust = MinimumCovarianceDeterminant::new(&sample, coverage, 1)?;
    let kept = robust.kept.iter().map(|&at| sample.points()[at]).collect();
    let kept = PlanarSample::new(kept)?;
    let covariance = kept.covariance().ok_or("too few kept")? * CONSISTENCY;
    let inverse = covariance.try_inverse().ok_or("kept on a line")?;
    let distance = |p: &Vector2<f64>| {
        let away = p - kept.centroid();
        away.dot(&(inverse * away))
    };
    let farthest = sample.points().iter().map(distance).fold(0.0, f64::max);
    Ok([covariance.determinant().sqrt(), farthest])
}

fn main() -> Result<(), Box<dyn Error>> {
    println!(
        "# examples/robust_calibration.rs of the statistics crate, seed n: clean round normal samples of n points"
    );
    println!("coverage,n,factor,factor_error,stretch,stretch_error,draws");
    let small = (6..=20).map(|n| (n, 40_000)).chain((21..=31).map(|n| (n, 20_000)));
    let asked: Vec<usize> =
        std::env::args().skip(1).map(|n| n.parse()).collect::<Result<_, _>>()?;
    let is_asked = |n: &usize| asked.is_empty() || asked.contains(n);
    for (n, draws) in small.chain(SIZES).filter(|(n, _)| is_asked(n)) {
        for (name, coverage) in
            [("half", Coverage::Half), ("three-quarters", Coverage::ThreeQuarters)]
        {
            let mut random = Pcg64::seed_from_u64(n as u64);
            let drawn = (0..draws)
                .map(|_| draw(n, coverage, &mut random))
                .collect::<Result<Vec<_>, _>>()?;
            let count = draws as f64;
            let mean = drawn.iter().map(|one| one[0]).sum::<f64>() / count;
            let off = drawn.iter().map(|one| (one[0] - mean).powi(2)).sum::<f64>() / count;
            let mut farthest: Vec<f64> = drawn.iter().map(|one| one[1]).collect();
            farthest.sort_unstable_by(f64::total_cmp);
            // Two standard errors of a rank to either side.
            let rank = draws * 95 / 100;
            let margin = 2 * (draws * 475 / 10_000).isqrt();
            let [low, middle, high] = [rank - margin, rank, rank + margin].map(|at| farthest[at]);
            let known = -2.0 * (-(0.95_f64.ln() / n as f64).exp_m1()).ln();
            // Distances by the covariance times the factor are smaller by it.
            println!(
                "{name},{n},{:.5},{:.5},{:.4},{:.4},{draws}",
                1.0 / mean,
                (off / count).sqrt() / (mean * mean),
                middle * mean / known,
                (high - low) * mean / known / 4.0,
            );
        }
    }
    Ok(())
}
