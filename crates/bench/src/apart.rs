//! Which shafts stand apart from the rest of their set.

use quarterturn_statistics::Sample;

use crate::BenchError;

/// Of fewer shafts none is called an outlier: half of four is no set.
pub const FEWEST: usize = 5;

/// The score beyond which a value stands apart.
const LIMIT: f64 = 3.5;

/// Makes a median absolute deviation a standard deviation: 1 / Φ⁻¹(3/4).
const TO_STANDARD: f64 = 1.482_602_218_505_602;

/// A value that stands apart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Apart {
    /// Its place among the values, the first being 0.
    pub at: usize,
    /// How far it lies above the median of the set.
    pub above_median: f64,
}

/// The values that stand apart from the set's median; none where there are fewer than [`FEWEST`].
///
/// # Formula
/// |x − median| > 3.5 s, s = 1.4826 median |x − median|, but never less than `resolution`: what the tool cannot tell
/// apart does not stand apart.
/// # Errors
/// [`BenchError::NotOneEach`] where a value is not finite, [`BenchError::NoMeasure`] where there is none,
/// [`BenchError::NotAboveZero`] for such a resolution.
/// # Source
/// B. Iglewicz and D. C. Hoaglin, *How to Detect and Handle Outliers*, 1993: the modified z-score and its 3.5
/// (from memory). The floor is ours.
pub fn standing_apart(values: &[f64], resolution: f64) -> Result<Vec<Apart>, BenchError> {
    crate::error::above_zero(resolution)?;
    if values.is_empty() {
        return Err(BenchError::NoMeasure);
    }
    let median = median(values.to_vec())?;
    let spread = TO_STANDARD * self::median(values.iter().map(|x| (x - median).abs()).collect())?;
    let far = LIMIT * spread.max(resolution);
    let apart = |(at, value): (usize, &f64)| Apart { at, above_median: value - median };
    let all = values.iter().enumerate().map(apart);
    Ok(all.filter(|one| values.len() >= FEWEST && one.above_median.abs() > far).collect())
}

fn median(values: Vec<f64>) -> Result<f64, BenchError> {
    let sample = Sample::new(values).map_err(|_| BenchError::NotOneEach)?;
    Ok(sample.median())
}
