//! The information in the shots about the unknowns, with the ends eliminated exactly.

use nalgebra::{DMatrix, DVector};

use crate::design::Combination;
use crate::readings::{Coordinate, Reading};

/// Information matrix Λ₁ and vector b of the unknowns θ: with a prior N(0, Λ₀⁻¹) the posterior is N(Λ⁻¹ b, Λ⁻¹), Λ = Λ₀ + Λ₁.
///
/// # Formula
/// A reading of one coordinate is y = e + z·θ + ε with ε ~ N(0, 1/w); the end's own e ~ N(0, 1/p) is common to its
/// shots. Integrating e out leaves, summed over ends and coordinates,
/// ```text
/// Λ₁ = Σ w z zᵀ − (Σ w z)(Σ w z)ᵀ / (p + Σ w)
/// b  = Σ w z y  − (Σ w z)(Σ w y)  / (p + Σ w)
/// ```
/// # Source
/// Sherman and Morrison (1950), Annals of Mathematical Statistics 21, 124 (rank-one update of an inverse).
pub struct NormalEquations {
    /// Λ₁, its lower half.
    pub information: DMatrix<f64>,
    /// b.
    pub vector: DVector<f64>,
    /// What of −2 ln p(y) the readings give by themselves, Σ w y² − (Σ w y)²/(p + Σ w) − Σ ln w + ln((p + Σ w)/p).
    pub constant: f64,
}

impl NormalEquations {
    /// Gathers all that was read of so many unknowns.
    pub fn gather(coordinates: &[Coordinate], unknowns: usize) -> Self {
        let mut all = Self {
            information: DMatrix::zeros(unknowns, unknowns),
            vector: DVector::zeros(unknowns),
            constant: 0.0,
        };
        for coordinate in coordinates {
            all.add(coordinate);
        }
        all
    }

    /// Adds one coordinate of one end, its own mean integrated out.
    fn add(&mut self, coordinate: &Coordinate) {
        for Reading { row, value, weight, .. } in &coordinate.readings {
            self.add_row(row, *weight, *value);
            self.constant += weight * value * value - weight.ln();
        }
        let (rows, values, weights) = coordinate.sums();
        self.add_row(&rows, -1.0 / weights, values);
        self.constant += (weights / coordinate.end_precision).ln() - values * values / weights;
    }

    /// Adds `weight` times the outer product of `row` with itself, and with `value`; of Λ₁ only the lower half is kept,
    /// which is all that a Cholesky root reads.
    fn add_row(&mut self, row: &Combination, weight: f64, value: f64) {
        for (place, &(column, factor)) in row.0.iter().enumerate() {
            let weighted = weight * factor;
            self.vector[column] += weighted * value;
            let mut below = self.information.column_mut(column);
            for &(at, other) in &row.0[place..] {
                below[at] += weighted * other;
            }
        }
    }
}
