//! What is told by shots where the sizes are known from elsewhere.

use super::residuals::Residuals;
use super::{Learned, Looseness, SlopeKnown, build, tails};
use crate::Scales;
use crate::evidence::Evidence;
use crate::layout::Layout;
use crate::observation::Observations;
use crate::readings::{Reader, ShotWeight};

/// What follows from what was observed at `scales`, of which nothing is learned and nothing is in doubt.
///
/// Shots that flew far and shafts that are built worse are told apart by what followed `before`, from fewer shots; further
/// ones count in full.
pub fn at_sizes(seen: &Observations, scales: &Scales, before: Option<&Learned>) -> Learned {
    let layout = Layout::of(seen);
    let mut weights = before.map_or_else(Vec::new, |before| before.weights.clone());
    weights.resize(seen.shots.len(), ShotWeight::FULL);
    let mut builds = before.map_or_else(Vec::new, |before| before.builds.clone());
    builds.extend(build::before(seen).into_iter().skip(builds.len()));
    let reader = Reader { seen, layout: &layout, scales, weights: &weights, builds: &builds };
    let evidence = Evidence::of(&reader);
    let residuals = Residuals::of(seen, &evidence.coordinates, &evidence.posterior);
    let looseness = Looseness::of_each(&evidence, scales);
    let posterior = evidence.posterior;
    Learned {
        scales: *scales,
        builds: build::builds(seen, &posterior, scales),
        weights: tails::weights(seen, &residuals, scales, &looseness),
        loose: looseness.iter().map(Looseness::probability).collect(),
        slope: SlopeKnown::exactly(scales),
        posterior,
    }
}
