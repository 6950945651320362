//! How the journal teaches the scales: expectation and maximisation in turn.

mod at_sizes;
mod build;
mod discrepancy;
mod end_mean;
mod foretold;
mod looseness;
mod over_scales;
mod part_sizes;
mod residuals;
mod scatter;
mod slope;
mod tails;

pub use self::at_sizes::at_sizes;
pub use self::build::Build;
pub use self::foretold::Foretold;
pub use self::looseness::Looseness;
use self::over_scales::over_scales;
use self::part_sizes::PartSizes;
use self::residuals::Residuals;
pub use self::slope::SlopeKnown;
use crate::Scales;
use crate::evidence::Evidence;
use crate::layout::Layout;
use crate::observation::Observations;
use crate::posterior::Posterior;
use crate::readings::{Reader, ShotWeight};

/// So many rounds before the size of the parts is looked for and as many after it bring the scales to within a few percent of
/// where they settle.
const ROUNDS: usize = 3;

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
    /// For each life, the probability that it scatters at least twice as widely as the archer's other shafts.
    pub loose: Vec<f64>,
    /// The lean that goes with a miss, and how well it is known.
    pub slope: SlopeKnown,
}

impl Learned {
    /// Reads what it was learned from at these scales and weights.
    pub fn reader<'a>(&'a self, seen: &'a Observations) -> Reader<'a> {
        let Self { scales, posterior, weights, builds, .. } = self;
        Reader { seen, layout: &posterior.layout, scales, weights, builds }
    }
}

/// Learns from what was observed, beginning with `expected`.
///
/// # Method
/// Each round takes the posterior of the unknowns at the present scales, and from it the expected squares of
/// everything that has a scale: each scale moves to where they put it, held by a weak prior at what was expected.
/// Shots that fly far weigh less, as a Student t tail asks; so do the shots of a shaft that does not repeat. A shaft
/// that is built worse than the others is not held to their size. Only the size that the shafts' parts have in common would
/// take too many rounds: it is looked for along its marginal likelihood, halfway.
///
/// # Source
/// Dempster, Laird and Rubin (1977), Journal of the Royal Statistical Society B 39, 1 (expectation and
/// maximisation); Lange, Little and Taylor (1989), Journal of the American Statistical Association 84, 881 (the
/// weights of t tails).
pub fn learn(seen: &Observations, expected: &Scales) -> Learned {
    let layout = Layout::of(seen);
    Learning::begin(seen, &layout, expected).rounds().with_part_sizes().rounds().end()
}

/// The scales and what goes with them, as learned so far.
struct Learning<'a> {
    seen: &'a Observations,
    layout: &'a Layout,
    expected: &'a Scales,
    scales: Scales,
    parts: PartSizes,
    weights: Vec<ShotWeight>,
    builds: Vec<Build>,
    looseness: Vec<Looseness>,
}

impl<'a> Learning<'a> {
    fn begin(seen: &'a Observations, layout: &'a Layout, expected: &'a Scales) -> Self {
        Self {
            seen,
            layout,
            expected,
            scales: *expected,
            parts: PartSizes::before(expected),
            weights: vec![ShotWeight::FULL; seen.shots.len()],
            builds: build::before(seen),
            looseness: vec![Looseness::BEFORE; seen.lives.len()],
        }
    }

    fn reader(&self) -> Reader<'_> {
        let Self { seen, layout, scales, weights, builds, .. } = self;
        Reader { seen, layout, scales, weights, builds }
    }

    fn rounds(self) -> Self {
        (0..ROUNDS).fold(self, |learning, _| learning.round())
    }

    fn round(self) -> Self {
        let Self { seen, expected, .. } = self;
        if seen.shots.is_empty() {
            return self;
        }
        let before = self.scales;
        let evidence = Evidence::of(&Reader { scales: &before, ..self.reader() });
        let Evidence { coordinates, posterior, .. } = &evidence;
        let residuals = Residuals::of(seen, coordinates, posterior);
        let mut scales = before;
        scatter::update(&mut scales, expected, seen, &residuals, &self.weights);
        self.parts.update(&mut scales, seen, posterior, &self.builds);
        discrepancy::update(&mut scales, expected, seen, posterior, &self.builds);
        slope::update(&mut scales, expected, &before, seen, coordinates, posterior);
        let builds = build::builds(seen, posterior, &scales);
        let looseness = Looseness::of_each(&evidence, &scales);
        let weights = tails::weights(seen, &residuals, &scales, &looseness);
        Self { scales, weights, builds, looseness, ..self }
    }

    fn with_part_sizes(self) -> Self {
        let parts = PartSizes::of(&self.reader(), self.expected);
        Self { parts, scales: parts.put(&self.scales), ..self }
    }

    fn end(self) -> Learned {
        let (slope, posterior) = over_scales(&self.reader(), self.expected, self.parts);
        let Self { scales, weights, builds, looseness, .. } = self;
        let loose = looseness.iter().map(Looseness::probability).collect();
        Learned { scales, posterior, weights, builds, loose, slope }
    }
}
