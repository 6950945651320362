//! The unknowns after the shots.

use nalgebra::{DMatrix, DVector};
use quarterturn_geometry::Offset;

use crate::design::{self, Combination, Planar};
use crate::layout::Layout;
use crate::normal_equations::NormalEquations;
use crate::precision_inverse::precision_inverse;
use crate::Miss;

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
    /// The posterior that follows from the normal equations.
    pub fn of(layout: Layout, equations: NormalEquations) -> Self {
        let covariance = precision_inverse(equations.precision);
        let mean = &covariance * &equations.vector;
        Self { layout, mean, covariance }
    }

    /// E[(value − of·θ)²].
    pub fn expected_square(&self, value: f64, of: &Combination) -> f64 {
        (value - of.of(|at| self.mean[at])).powi(2) + self.covariance_of(of, of)
    }

    /// E[(value − of·θ) (with·θ)].
    pub fn expected_product(&self, value: f64, of: &Combination, with: &Combination) -> f64 {
        let mean = |of: &Combination| of.of(|at| self.mean[at]);
        (value - mean(of)) * mean(with) - self.covariance_of(of, with)
    }

    fn covariance_of(&self, one: &Combination, other: &Combination) -> f64 {
        let column = |by: usize| {
            let column = self.covariance.column(by);
            one.of(|at| column[at])
        };
        other.of(column)
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
