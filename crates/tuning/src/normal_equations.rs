//! The information in the shots about the unknowns, with the ends eliminated exactly.

use nalgebra::{DMatrix, DVector};

use crate::design::Combination;
use crate::readings::{Coordinate, Reading};

/// Precision matrix Λ and vector b of the unknowns θ: the posterior is N(Λ⁻¹ b, Λ⁻¹).
///
/// # Formula
/// A reading of one coordinate is y = e + z·θ + ε with ε ~ N(0, 1/w); the end's own e ~ N(0, 1/p) is common to its
/// shots. Integrating e out leaves, summed over ends and coordinates,
/// ```text
/// Λ = Λ₀ + Σ w z zᵀ − (Σ w z)(Σ w z)ᵀ / (p + Σ w)
/// b =      Σ w z y  − (Σ w z)(Σ w y)  / (p + Σ w)
/// ```
/// # Source
/// Sherman and Morrison (1950), Annals of Mathematical Statistics 21, 124 (rank-one update of an inverse).
pub struct NormalEquations {
    /// Λ.
    pub precision: DMatrix<f64>,
    /// b.
    pub vector: DVector<f64>,
}

impl NormalEquations {
    /// Gathers all that was read on top of the prior precision Λ₀.
    pub fn gather(coordinates: &[Coordinate], prior: DMatrix<f64>) -> Self {
        let vector = DVector::zeros(prior.nrows());
        let mut all = Self { precision: prior, vector };
        for coordinate in coordinates {
            all.add(coordinate);
        }
        all
    }

    /// Adds one coordinate of one end, its own mean integrated out.
    fn add(&mut self, coordinate: &Coordinate) {
        for Reading { row, value, weight, .. } in &coordinate.readings {
            self.add_row(row, *weight, *value);
        }
        let (rows, values, weights) = coordinate.sums();
        self.add_row(&rows, -1.0 / weights, values);
    }

    /// Adds `weight` times the outer product of `row` with itself, and with `value`.
    fn add_row(&mut self, row: &Combination, weight: f64, value: f64) {
        for &(column, factor) in &row.0 {
            self.vector[column] += weight * factor * value;
            for &(at, other) in &row.0 {
                self.precision[(at, column)] += weight * factor * other;
            }
        }
    }
}
