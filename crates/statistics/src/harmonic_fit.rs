//! Least squares of a constant and harmonics in an angle.

use nalgebra::{DMatrix, DVector};
use thiserror::Error;

use crate::distributions::StudentT;
use crate::{Estimate, Interval, Level, Sample};

/// y(θ) = β₀ + Σₖ (β₂ₖ₋₁ cos kθ + β₂ₖ sin kθ), k = 1 … `harmonics`, fitted by least squares.
///
/// # Formula
/// X = QR with a row (1, cos θ, sin θ, cos 2θ, …) for each value; β = R⁻¹Qᵀy; s² = |y − Xβ|²/(n − p), p = 1 + 2 `harmonics`;
/// covariance s² R⁻¹R⁻ᵀ. At evenly spaced angles this is the discrete Fourier transform.
///
/// # Assumptions
/// For covariance and intervals: independent normal errors of one variance.
///
/// # Source
/// Linear regression, e.g. Å. Björck, 1996, Numerical Methods for Least Squares Problems, chapter 2 (from memory).
#[derive(Clone, Debug, PartialEq)]
pub struct HarmonicFit {
    coefficients: DVector<f64>,
    /// (XᵀX)⁻¹.
    inverse: DMatrix<f64>,
    residual_sum_of_squares: f64,
    n: usize,
}

/// A column that keeps less than this share of its length beside the earlier ones is told apart by rounding alone.
const ALIASED: f64 = 1e-7;

impl HarmonicFit {
    /// Fits `harmonics` harmonics to `values` at `angles_rad`, one angle for each value.
    ///
    /// # Errors
    /// [`HarmonicError`] where the counts differ, the values are fewer than the unknowns, or the positions leave some
    /// harmonic undetermined.
    pub fn new(
        angles_rad: &Sample,
        values: &Sample,
        harmonics: usize,
    ) -> Result<Self, HarmonicError> {
        let n = values.n();
        if angles_rad.n() != n {
            return Err(HarmonicError::CountsDiffer { angles: angles_rad.n(), values: n });
        }
        let unknowns = harmonics.saturating_mul(2).saturating_add(1);
        if unknowns > n {
            return Err(HarmonicError::TooFewValues { values: n, unknowns });
        }
        let angles = angles_rad.values();
        let rows = angles.iter().flat_map(|&angle| (0..unknowns).map(move |c| basis(c, angle)));
        let design = DMatrix::from_row_iterator(n, unknowns, rows);
        let observed = DVector::from_column_slice(values.values());
        let qr = design.clone().qr();
        let triangle = qr.r();
        let least = ALIASED * (n as f64).sqrt();
        let unresolved = triangle.diagonal().iter().position(|pivot| pivot.abs() < least);
        let (None, Some(root)) = (unresolved, inverse_of_upper(&triangle)) else {
            let harmonic = unresolved.unwrap_or(0).div_ceil(2);
            return Err(HarmonicError::Aliased { harmonic, positions: positions(angles) });
        };
        let coefficients = &root * (qr.q().transpose() * &observed);
        let residual_sum_of_squares = (observed - design * &coefficients).norm_squared();
        Ok(Self { coefficients, inverse: &root * root.transpose(), residual_sum_of_squares, n })
    }

    /// Constant, cos θ, sin θ, cos 2θ, sin 2θ, …
    pub fn coefficients(&self) -> &[f64] {
        self.coefficients.as_slice()
    }

    /// The fitted value at an angle.
    pub fn value_at(&self, angle_rad: f64) -> f64 {
        self.coefficients.iter().enumerate().map(|(column, b)| b * basis(column, angle_rad)).sum()
    }

    /// Covariance of the coefficients, in their order; `None` where no value is left over to tell the error.
    pub fn covariance(&self) -> Option<DMatrix<f64>> {
        let freedom = self.degrees_of_freedom();
        (freedom > 0).then(|| &self.inverse * (self.residual_sum_of_squares / freedom as f64))
    }

    /// The coefficients, in their order, with their intervals at `level`; `None` as for [`covariance`](Self::covariance).
    pub fn estimates(&self, level: Level) -> Option<Vec<Estimate>> {
        let covariance = self.covariance()?;
        let student = StudentT::new(self.degrees_of_freedom() as f64).ok()?;
        let quantile = student.quantile(level.upper_end());
        let estimate = |(&value, variance): (&f64, &f64)| {
            let standard_error = variance.sqrt();
            let reach = quantile * standard_error;
            let (lower, upper) = (value - reach, value + reach);
            let interval = Interval { lower, upper, level: level.probability() };
            Estimate { value, standard_error, interval, n: self.n }
        };
        Some(self.coefficients.iter().zip(&covariance.diagonal()).map(estimate).collect())
    }

    /// Values less unknowns.
    pub fn degrees_of_freedom(&self) -> usize {
        self.n - self.coefficients.len()
    }
}

/// Column 0 is the constant, 2k − 1 is cos kθ, 2k is sin kθ.
fn basis(column: usize, angle_rad: f64) -> f64 {
    let argument = column.div_ceil(2) as f64 * angle_rad;
    if column % 2 == 1 || column == 0 { argument.cos() } else { argument.sin() }
}

fn inverse_of_upper(triangle: &DMatrix<f64>) -> Option<DMatrix<f64>> {
    triangle.solve_upper_triangular(&DMatrix::identity(triangle.nrows(), triangle.ncols()))
}

/// How many positions differ by more than rounding.
fn positions(angles_rad: &[f64]) -> usize {
    let same = |a: f64, b: f64| (0.5 * (a - b)).sin().abs() < ALIASED;
    let distinct = angles_rad.iter().fold(Vec::new(), |mut seen: Vec<f64>, &angle| {
        if !seen.iter().any(|&earlier| same(earlier, angle)) {
            seen.push(angle);
        }
        seen
    });
    distinct.len()
}

/// Why a harmonic series cannot be fitted.
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[non_exhaustive]
pub enum HarmonicError {
    /// Angles and values do not pair up.
    #[error("{angles} angles for {values} values; each value needs its angle")]
    CountsDiffer {
        /// Number of angles.
        angles: usize,
        /// Number of values.
        values: usize,
    },
    /// More unknowns than values.
    #[error("{values} values for {unknowns} unknowns; take more values or fewer harmonics")]
    TooFewValues {
        /// Number of values.
        values: usize,
        /// Number of coefficients asked for.
        unknowns: usize,
    },
    /// The positions see a harmonic as something lower, or not at all.
    #[error(
        "{positions} different positions cannot tell harmonic {harmonic} from the lower ones; \
         take fewer harmonics or other positions"
    )]
    Aliased {
        /// The first harmonic that is not determined.
        harmonic: usize,
        /// Number of different positions.
        positions: usize,
    },
}
