//! A non-empty sample of finite numbers: the only gate for NaN.

use thiserror::Error;

use crate::distributions::StudentT;
use crate::{Estimate, Interval, Level};

/// At least one number, all finite and of a size whose fourth power is finite too.
#[derive(Clone, Debug, PartialEq)]
pub struct Sample(Vec<f64>);

impl Sample {
    /// The largest magnitude taken: sums of products of squares stay finite below it.
    pub const LARGEST: f64 = 1e70;

    /// A sample of `values`.
    ///
    /// # Errors
    /// [`SampleError`] where there is no value, or one that is not finite or beyond [`LARGEST`](Self::LARGEST).
    pub fn new(values: Vec<f64>) -> Result<Self, SampleError> {
        check(values.iter().copied().enumerate())?;
        if values.is_empty() { Err(SampleError::Empty) } else { Ok(Self(values)) }
    }

    /// The values in the order given.
    pub fn values(&self) -> &[f64] {
        &self.0
    }

    /// How many values there are, at least one.
    pub fn n(&self) -> usize {
        self.0.len()
    }

    /// Every value and `by`; only within what a sample holds.
    pub(crate) fn shifted(&self, by: f64) -> Self {
        Self(self.0.iter().map(|value| value + by).collect())
    }

    /// How much a value goes with the one before it: the autocorrelation at lag one; `None` where nothing scatters.
    ///
    /// # Formula
    /// r₁ = Σ (xᵢ − x̄)(xᵢ₊₁ − x̄)/Σ (xᵢ − x̄)².
    ///
    /// # Source
    /// G. E. P. Box, G. M. Jenkins, 1976, Time Series Analysis, section 2.1 (from memory).
    pub fn lag_one_autocorrelation(&self) -> Option<f64> {
        let mean = self.mean();
        let squares: f64 = self.0.iter().map(|x| (x - mean).powi(2)).sum();
        let pairs: f64 = self.0.windows(2).map(|pair| (pair[0] - mean) * (pair[1] - mean)).sum();
        (squares > 0.0).then(|| pairs / squares)
    }

    /// The same values without those at `positions`, counted from 0; `None` where no value would be left.
    ///
    /// Positions that the sample does not have are passed over.
    #[must_use]
    pub fn without(&self, positions: &[usize]) -> Option<Self> {
        let values = self.0.iter().enumerate();
        let left = values.filter(|(at, _)| !positions.contains(at)).map(|(_, value)| *value);
        Self::new(left.collect()).ok()
    }

    /// The arithmetic mean.
    ///
    /// # Formula
    /// c + Σ(xᵢ − c)/n, once with c the first value and once more with c the result, which takes out the rounding.
    pub fn mean(&self) -> f64 {
        let about = |c: f64| c + self.0.iter().map(|x| x - c).sum::<f64>() / self.n() as f64;
        about(about(self.0.first().copied().unwrap_or_default()))
    }

    /// The variance about the mean; `None` for a single value.
    ///
    /// # Formula
    /// s² = (Σdᵢ² − (Σdᵢ)²/n)/(n − 1), dᵢ = xᵢ − x̄.
    ///
    /// # Source
    /// Corrected two-pass algorithm: T. F. Chan and others, 1983, Algorithms for computing the sample
    /// variance, The American Statistician 37, equation 1.7 (from memory).
    pub fn variance(&self) -> Option<f64> {
        if self.n() < 2 {
            return None;
        }
        let (n, mean) = (self.n() as f64, self.mean());
        let sum = self.0.iter().map(|x| x - mean).sum::<f64>();
        let squares = self.0.iter().map(|x| (x - mean).powi(2)).sum::<f64>();
        Some((squares - sum * sum / n) / (n - 1.0))
    }

    /// The mean with its interval at `level`; `None` for a single value.
    ///
    /// # Formula
    /// x̄ ± t s/√n, t the quantile of Student's distribution with n − 1 degrees of freedom at (1 + level)/2.
    ///
    /// # Assumptions
    /// Independent draws from one normal distribution. Equal values give an interval of no width.
    pub fn mean_estimate(&self, level: Level) -> Option<Estimate> {
        let standard_error = (self.variance()? / self.n() as f64).sqrt();
        let student = StudentT::new((self.n() - 1) as f64).ok()?;
        let reach = student.quantile(level.upper_end()) * standard_error;
        let value = self.mean();
        let interval =
            Interval { lower: value - reach, upper: value + reach, level: level.probability() };
        Some(Estimate { value, standard_error, interval, n: self.n() })
    }
}

/// Refuses the first number that cannot be computed with.
pub(crate) fn check(numbers: impl Iterator<Item = (usize, f64)>) -> Result<(), SampleError> {
    for (position, value) in numbers {
        if !value.is_finite() {
            return Err(SampleError::NotFinite { position, value });
        }
        if value.abs() > Sample::LARGEST {
            return Err(SampleError::TooLarge { position, value });
        }
    }
    Ok(())
}

/// Why a sample was refused.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum SampleError {
    /// No observation at all.
    #[error("the sample is empty; at least one observation is needed")]
    Empty,
    /// A NaN or an infinity.
    #[error("observation {} is {value}, which is not a finite number", position + 1)]
    NotFinite {
        /// Where it stands, counted from 0.
        position: usize,
        /// What stands there.
        value: f64,
    },
    /// A number whose powers overflow.
    #[error("observation {} is {value:e}; at most {:e} can be computed with", position + 1, Sample::LARGEST)]
    TooLarge {
        /// Where it stands, counted from 0.
        position: usize,
        /// What stands there.
        value: f64,
    },
}
