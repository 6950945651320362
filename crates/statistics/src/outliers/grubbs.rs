//! Grubbs' test for one outlier.

use crate::distributions::StudentT;
use crate::statistic_error::at_least;
use crate::{Influence, Level, Sample, StatisticError, TestResult};

/// On which side an outlier is looked for: settled before the data are seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Only the smallest value.
    Smallest,
    /// Only the largest value.
    Largest,
    /// Whichever lies farther from the mean.
    Either,
}

/// The value that stands out most, and how far.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GrubbsTest {
    /// Where the value stands, counted from 0.
    pub position: usize,
    /// Whether all are of one normal distribution; the statistic is G.
    pub test: TestResult,
    /// What would change without the value.
    pub influence: Influence<f64>,
}

/// Tests whether the value farthest out is of the same normal distribution as the others.
///
/// # Formula
/// G = |x − x̄|/s. With t² = n(n − 2) G²/((n − 1)² − n G²) the p-value is m P(T > t), T Student's with n − 2 degrees of freedom,
/// m = n for one side and 2n for either, and 1 at most. This bound is exact where no two values can be so far out on that side,
/// that is for small p.
///
/// # Assumptions
/// Independent normal values and one outlier at most: two on the same side hide each other, for which see
/// [`generalized_esd`](crate::generalized_esd).
///
/// # Errors
/// [`StatisticError`] for fewer than three values, or values that are all equal.
///
/// # Source
/// F. E. Grubbs, 1950, Sample criteria for testing outlying observations, Annals of Mathematical Statistics 21, 27 (from
/// memory); NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.1.
pub fn grubbs_test(sample: &Sample, side: Side) -> Result<GrubbsTest, StatisticError> {
    at_least(sample.n(), 3)?;
    let (position, statistic) = farthest(sample, side)?;
    let n = sample.n() as f64;
    // G is at most (n − 1)/√n, where t is infinite.
    let left = ((n - 1.0).powi(2) - n * statistic * statistic).max(0.0);
    let t = statistic.signum() * (n * (n - 2.0) * statistic * statistic / left).sqrt();
    let tail = StudentT::new(n - 2.0)?.upper_tail(t);
    let p_value = (tail * tails(side) * n).min(1.0);
    let influence = sample.influence(&[position]).ok_or(StatisticError::NoScatter)?;
    let test = TestResult { statistic, p_value, n: sample.n() };
    Ok(GrubbsTest { position, test, influence })
}

/// The G that is exceeded by chance with probability 1 − `level` at most; `None` for fewer than three values.
///
/// # Formula
/// (n − 1)/√n √(t²/(n − 2 + t²)), t Student's quantile with n − 2 degrees of freedom at 1 − (1 − level)/m, m as in [`grubbs_test`].
///
/// # Source
/// As there; ASTM E178 tabulates it.
pub fn grubbs_critical_value(n: usize, side: Side, level: Level) -> Option<f64> {
    let size = n as f64;
    let tail = Level::new((1.0 - level.probability()) / (tails(side) * size)).ok()?;
    let t = StudentT::new(size - 2.0).ok()?.quantile(tail);
    Some((size - 1.0) / size.sqrt() * (t * t / (size - 2.0 + t * t)).sqrt())
}

fn tails(side: Side) -> f64 {
    if side == Side::Either { 2.0 } else { 1.0 }
}

/// The value farthest out on `side`: where it stands, and how many standard deviations from the mean.
pub(super) fn farthest(sample: &Sample, side: Side) -> Result<(usize, f64), StatisticError> {
    let (mean, deviation) = (sample.mean(), sample.variance().unwrap_or(0.0).sqrt());
    let out = |x: &f64| match side {
        Side::Smallest => mean - x,
        Side::Largest => x - mean,
        Side::Either => (x - mean).abs(),
    };
    let distances = sample.values().iter().map(out).enumerate();
    let farthest = distances.max_by(|a, b| a.1.total_cmp(&b.1));
    // Beside a rounding of the mean nothing scatters.
    let scatters = deviation > 1e-14 * mean.abs();
    let (position, away) = farthest.filter(|_| scatters).ok_or(StatisticError::NoScatter)?;
    Ok((position, away / deviation))
}
