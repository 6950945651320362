//! What would change without some observations.

use nalgebra::Vector2;

use crate::{Level, PlanarSample, PooledSpread, Sample};

/// Centre and spread with all observations and without some, which stay where they are.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Influence<C> {
    /// With all of them.
    pub with: Summary<C>,
    /// Without those asked about.
    pub without: Summary<C>,
}

/// A centre, a spread, and how many observations they are of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Summary<C> {
    /// The mean.
    pub centre: C,
    /// The standard deviation: of numbers s, of points σ̂ per axis as in [`PooledSpread::estimate`]; 0 for a single one.
    pub spread: f64,
    /// Number of observations.
    pub n: usize,
}

impl Sample {
    /// What would change without the values at `positions`, counted from 0; `None` where no value would be left.
    pub fn influence(&self, positions: &[usize]) -> Option<Influence<f64>> {
        let summary = |sample: &Self| Summary {
            centre: sample.mean(),
            spread: sample.variance().unwrap_or(0.0).sqrt(),
            n: sample.n(),
        };
        Some(Influence { with: summary(self), without: summary(&self.without(positions)?) })
    }
}

impl PlanarSample {
    /// What would change without the points at `positions`, counted from 0; `None` where no point would be left.
    pub fn influence(&self, positions: &[usize]) -> Option<Influence<Vector2<f64>>> {
        let summary = |sample: &Self| Summary {
            centre: sample.centroid(),
            spread: PooledSpread::of([sample]).estimate(Level::P95).map_or(0.0, |s| s.value),
            n: sample.n(),
        };
        Some(Influence { with: summary(self), without: summary(&self.without(positions)?) })
    }
}
