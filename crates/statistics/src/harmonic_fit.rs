//! Least squares of a constant and harmonics in an angle.

use nalgebra::{DMatrix, DVector};
use thiserror::Error;

use crate::distributions::{FisherF, StudentT};
use crate::harmonic_alias::{Alias, Wave, aliases_of, positions};
use crate::{Estimate, Interval, Level, Sample, TestResult};

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
        if let Some(alias) = aliases_of(angles, harmonics).into_iter().next() {
            return Err(HarmonicError::Aliased { alias, positions: positions(angles) });
        }
        let rows = angles.iter().flat_map(|&angle| Wave::first(unknowns).map(move |w| w.at(angle)));
        let design = DMatrix::from_row_iterator(n, unknowns, rows);
        let observed = DVector::from_column_slice(values.values());
        let qr = design.clone().qr();
        // Never singular, as no wave is an alias; an inverse of nothing would show in every number.
        let root = inverse_of_upper(&qr.r());
        let coefficients = &root * (qr.q().transpose() * &observed);
        let residual_sum_of_squares = (observed - design * &coefficients).norm_squared();
        Ok(Self { coefficients, inverse: &root * root.transpose(), residual_sum_of_squares, n })
    }

    /// Constant, cos θ, sin θ, cos 2θ, sin 2θ, …: in the order of [`Wave`].
    pub fn coefficients(&self) -> &[f64] {
        self.coefficients.as_slice()
    }

    /// The fitted value at an angle.
    pub fn value_at(&self, angle_rad: f64) -> f64 {
        let waves = Wave::first(self.coefficients.len());
        waves.zip(&self.coefficients).map(|(wave, b)| b * wave.at(angle_rad)).sum()
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

    /// The test that harmonic `harmonic`, both its waves, is not there; `None` as for [`covariance`](Self::covariance),
    /// for a harmonic that was not fitted, and where the fit goes through every value. The statistic is F.
    ///
    /// # Formula
    /// F = bᵀ V⁻¹ b/2 with b its two coefficients and V their covariance, Fisher's with 2 and n − p degrees of freedom.
    ///
    /// # Source
    /// Linear regression, e.g. G. A. F. Seber, A. J. Lee, 2003, Linear Regression Analysis, section 4.3 (from memory).
    pub fn harmonic_test(&self, harmonic: usize) -> Option<TestResult> {
        let place = harmonic.checked_mul(2)?.checked_sub(1)?;
        let covariance = self.covariance().filter(|v| place + 1 < v.nrows())?;
        let both = covariance.fixed_view::<2, 2>(place, place);
        let pair = self.coefficients.fixed_rows::<2>(place);
        let statistic = 0.5 * pair.dot(&(both.try_inverse()? * pair));
        let p_value =
            FisherF::new(2.0, self.degrees_of_freedom() as f64).ok()?.upper_tail(statistic);
        Some(TestResult { statistic, p_value, n: self.n })
    }

    /// Values less unknowns.
    pub fn degrees_of_freedom(&self) -> usize {
        self.n - self.coefficients.len()
    }
}

fn inverse_of_upper(triangle: &DMatrix<f64>) -> DMatrix<f64> {
    let mut inverse = DMatrix::identity(triangle.nrows(), triangle.ncols());
    triangle.solve_upper_triangular_mut(&mut inverse);
    inverse
}

/// Why a harmonic series cannot be fitted.
#[derive(Clone, Debug, Error, PartialEq)]
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
    /// The positions see a wave as lower ones, or not at all.
    #[error("{positions} different positions: {alias}; take fewer harmonics or other positions")]
    Aliased {
        /// The first wave that is not determined, and what it is taken for.
        alias: Alias,
        /// Number of different positions.
        positions: usize,
    },
    /// So many harmonics that nobody can have meant them.
    #[error("{harmonics} harmonics; at most {most} can be told apart here")]
    TooMany {
        /// How many were asked for.
        harmonics: usize,
        /// How many can be.
        most: usize,
    },
}
