//! How the journal teaches the scales: expectation and maximisation in turn.

mod at_sizes;
mod build;
mod end_mean;
mod over_scales;
mod residuals;
mod scatter;
mod sizes;
mod slope;
mod tails;

pub use self::at_sizes::at_sizes;
pub use self::build::Build;
use self::over_scales::over_scales;
use self::residuals::Residuals;
pub use self::slope::SlopeKnown;
use self::tails::Looseness;
pub use self::tails::looseness_without;
use crate::Scales;
use crate::layout::Layout;
use crate::observation::Observations;
use crate::posterior::Posterior;
use crate::readings::{Reader, ShotWeight};

/// So many rounds bring the scales to within a few percent of where they settle.
const ROUNDS: usize = 6;

/// What was learned from what was observed.
pub struct Learned {
    /// The scales.
    pub scales: Scales,
    /// The unknowns, with what is not known of the scales.
    pub posterior: Posterior,
    /// How much each shot counts.
    pub weights: Vec<ShotWeight>,
    /// For each life, how it is built.
    pub builds: Vec<Build>,
    /// For each shot, the expected square of what it scattered, mm², summed over the two axes as if the archer were as wide in both.
    pub residuals_mm2: Vec<f64>,
    /// For each life, the probability that it scatters at least twice as widely as the archer's other shafts.
    pub loose: Vec<f64>,
}

/// Learns from what was observed, beginning with `expected`.
///
/// # Method
/// Each round takes the posterior of the unknowns at the present scales, and from it the expected squares of
/// everything that has a scale: each scale moves to where they put it, held by a weak prior at what was expected.
/// Shots that fly far weigh less, as a Student t tail asks; so do the shots of a shaft that does not repeat. A shaft
/// that is built worse than the others is not held to their size.
///
/// # Source
/// Dempster, Laird and Rubin (1977), Journal of the Royal Statistical Society B 39, 1 (expectation and
/// maximisation); Lange, Little and Taylor (1989), Journal of the American Statistical Association 84, 881 (the
/// weights of t tails).
pub fn learn(seen: &Observations, expected: &Scales) -> Learned {
    let layout = Layout::of(seen);
    let mut scales = *expected;
    let mut weights = vec![ShotWeight::FULL; seen.shots.len()];
    let mut builds = build::before(seen);
    let mut residuals_mm2 = vec![0.0; seen.shots.len()];
    let mut looseness = vec![Looseness::BEFORE; seen.lives.len()];
    if !seen.shots.is_empty() {
        for _ in 0..ROUNDS {
            let reader = Reader {
                seen,
                layout: &layout,
                scales: &scales,
                weights: &weights,
                builds: &builds,
            };
            let (coordinates, posterior) = reader.solve();
            let residuals = Residuals::of(seen, &coordinates, &posterior);
            let before = scales;
            scatter::update(&mut scales, expected, seen, &residuals, &weights);
            sizes::update(&mut scales, expected, seen, &posterior, &builds);
            slope::update(&mut scales, expected, &before, seen, &coordinates, &posterior);
            builds = build::builds(seen, &posterior, &scales);
            looseness = tails::looseness(seen, &residuals, &scales);
            weights = tails::weights(seen, &residuals, &scales, &looseness);
            residuals_mm2 = residuals.hit.iter().map(|&one| scales.rounded_mm2(one)).collect();
        }
    }
    let reader =
        Reader { seen, layout: &layout, scales: &scales, weights: &weights, builds: &builds };
    let loose = looseness.iter().map(Looseness::probability).collect();
    let posterior = over_scales(&reader);
    Learned { scales, posterior, weights, builds, residuals_mm2, loose }
}
