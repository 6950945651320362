//! The points that stand out.

use nalgebra::Vector2;

use super::MinimumCovarianceDeterminant;
use crate::Influence;

/// A point that stands out from the bulk of its sample.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlanarFlag {
    /// Where it stands, counted from 0.
    pub position: usize,
    /// How far it lies from the robust centre, in standard deviations of the robust covariance that way.
    pub distance: f64,
    /// What would change without it.
    pub influence: Influence<Vector2<f64>>,
}

impl MinimumCovarianceDeterminant<'_> {
    /// The points beyond the cut-off, in the order of the sample.
    ///
    /// In a clean normal sample there is any at all with probability 0.05.
    pub fn flags(&self) -> impl Iterator<Item = PlanarFlag> {
        let distances = self.squared_distances.iter().enumerate();
        let beyond = distances.filter(|(_, squared)| **squared > self.cutoff);
        beyond.filter_map(|(position, squared)| {
            let influence = self.sample.influence(&[position])?;
            Some(PlanarFlag { position, distance: squared.sqrt(), influence })
        })
    }
}
