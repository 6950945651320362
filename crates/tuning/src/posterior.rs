//! The unknowns after the shots.

use nalgebra::{DMatrix, DVector, Matrix2};
use quarterturn_geometry::Offset;

use crate::Miss;
use crate::design::{self, Combination, Planar};
use crate::layout::Layout;
use crate::normal_equations::NormalEquations;
use crate::precision_inverse::PrecisionInverse;
use crate::prior::Prior;

/// The Gaussian posterior of all unknowns at given scales.
pub struct Posterior {
    /// Where each unknown stands.
    pub layout: Layout,
    /// Their mean.
    pub mean: DVector<f64>,
    /// Their covariance.
    pub covariance: DMatrix<f64>,
    /// −2 ln of the marginal likelihood, but for a constant.
    pub deviance: f64,
}

impl Posterior {
    /// The posterior that follows from a prior and the normal equations.
    pub fn of(layout: Layout, prior: Prior, equations: &NormalEquations) -> Self {
        let PrecisionInverse { inverse: covariance, log_det } =
            PrecisionInverse::of(prior.precision + &equations.information);
        let mean = &covariance * &equations.vector;
        let told = equations.constant - mean.dot(&equations.vector);
        let deviance = told + log_det - prior.log_det;
        Self { layout, mean, covariance, deviance }
    }

    /// The mean of a combination of unknowns.
    pub fn mean_of(&self, of: &Combination) -> f64 {
        of.of(|at| self.mean[at])
    }

    /// The variance of a combination of unknowns.
    pub fn variance_of(&self, of: &Combination) -> f64 {
        let of_pairs = of.0.iter().enumerate().map(|(place, &(by, factor))| {
            let column = self.covariance.column(by);
            let across: f64 = of.0[place + 1..].iter().map(|&(at, other)| other * column[at]).sum();
            factor * (factor * column[by] + 2.0 * across)
        });
        of_pairs.sum()
    }

    /// The expected square of the length of the planar unknown at `at`.
    pub fn expected_square(&self, at: usize) -> f64 {
        (at..at + 2).map(|at| self.mean[at].powi(2) + self.covariance[(at, at)]).sum()
    }

    /// The covariance of two combinations of unknowns.
    pub fn covariance_of(&self, one: &Combination, other: &Combination) -> f64 {
        other.of(|by| {
            let column = self.covariance.column(by);
            one.of(|at| column[at])
        })
    }

    /// The covariance of a combination of unknowns with every unknown.
    pub fn covariance_with_all(&self, of: &Combination) -> DVector<f64> {
        let none = DVector::zeros(self.mean.len());
        of.0.iter().fold(none, |sum, &(at, factor)| sum + self.covariance.column(at) * factor)
    }

    /// Mean and covariance of something in the plane.
    pub fn miss(&self, of: &Planar) -> Miss {
        let mean = design::value(of, |at| self.mean[at]);
        let [x, y] = of;
        let across = self.covariance_of(x, y);
        let covariance_mm2 = Matrix2::new(self.variance_of(x), across, across, self.variance_of(y));
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
