//! The unknowns after the shots.

use nalgebra::{DMatrix, DVector};
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
    /// The posterior of what was observed.
    pub fn fit(seen: &Observations, scales: &Scales) -> Self {
        let layout = Layout::of(seen);
        let weights = vec![1.0; seen.shots.len()];
        let equations = NormalEquations::gather(seen, &weights, &layout, scales);
        let covariance = inverse(equations.precision);
        let mean = &covariance * &equations.vector;
        Self { layout, mean, covariance }
    }

    /// Mean and covariance of something in the plane.
    pub fn miss(&self, of: &Planar) -> Miss {
        let mean = design::value(of, |at| self.mean[at]);
        let covariance_mm2 =
            self.joint_covariance(std::slice::from_ref(of)).fixed_view::<2, 2>(0, 0).into();
        Miss { mean: Offset::new(mean.x, mean.y), covariance_mm2 }
    }

    /// The covariance of several things in the plane, two rows and columns each.
    pub fn joint_covariance(&self, of: &[Planar]) -> DMatrix<f64> {
        let places = places(of);
        let known = DMatrix::from_fn(places.len(), places.len(), |row, column| {
            self.covariance[(places[row], places[column])]
        });
        let mut rows: DMatrix<f64> = DMatrix::zeros(2 * of.len(), places.len());
        for (row, combination) in of.iter().flatten().enumerate() {
            for &(at, factor) in &combination.0 {
                if let Ok(column) = places.binary_search(&at) {
                    rows[(row, column)] += factor;
                }
            }
        }
        &rows * known * rows.transpose()
    }
}

/// The inverse of a precision matrix.
///
/// The prior alone makes it positive definite; where rounding undoes that, the prior is all that is left to say.
fn inverse(precision: DMatrix<f64>) -> DMatrix<f64> {
    let diagonal = precision.diagonal();
    match precision.cholesky() {
        Some(root) => root.inverse(),
        None => DMatrix::from_diagonal(&diagonal.map(f64::recip)),
    }
}

/// The places that any of the combinations names, once each and in order.
fn places(of: &[Planar]) -> Vec<usize> {
    let mut places: Vec<_> = of
        .iter()
        .flatten()
        .flat_map(|combination| combination.0.iter().map(|&(at, _)| at))
        .collect();
    places.sort_unstable();
    places.dedup();
    places
}
