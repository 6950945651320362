//! The unknowns after the shots.

use nalgebra::{DMatrix, DVector, Matrix2};
use quarterturn_geometry::Offset;

use crate::design::{self, Planar};
use crate::layout::Layout;
use crate::normal_equations::NormalEquations;
use crate::observation::Observations;
use crate::{Miss, Scales};

/// The Gaussian posterior of all unknowns at given scales.
pub struct Posterior {
    /// Where each unknown stands.
    pub layout: Layout,
    /// Their mean.
    pub mean: DVector<f64>,
    /// Their covariance.
    pub covariance: DMatrix<f64>,
}

impl Posterior {
    /// The posterior of what was observed; `None` only where the scales are no numbers.
    pub fn fit(seen: &Observations, scales: &Scales) -> Option<Self> {
        let layout = Layout::of(seen);
        let weights = vec![1.0; seen.shots.len()];
        let equations = NormalEquations::gather(seen, &weights, &layout, scales);
        let root = equations.precision.cholesky()?;
        let mean = root.solve(&equations.vector);
        Some(Self { layout, mean, covariance: root.inverse() })
    }

    /// Mean and covariance of something in the plane.
    pub fn miss(&self, of: &Planar) -> Miss {
        let mean = design::value(of, |at| self.mean[at]);
        let covariance_mm2 = Matrix2::from_fn(|row, column| self.covariance_of(of, of, row, column));
        Miss { mean: Offset::new(mean.x, mean.y), covariance_mm2 }
    }

    /// Covariance of one component of `one` with one of `other`.
    pub fn covariance_of(&self, one: &Planar, other: &Planar, row: usize, column: usize) -> f64 {
        one[row].of(|at| other[column].of(|by| self.covariance[(at, by)]))
    }
}
