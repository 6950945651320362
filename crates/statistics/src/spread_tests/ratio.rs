//! The ratio of two spreads.

use super::variance;
use crate::distributions::FisherF;
use crate::{Interval, Level, PooledSpread, StatisticError, TestResult};

/// How many times as wide one group spreads as another.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SpreadRatio {
    /// s₁/s₂, a ratio of standard deviations.
    pub ratio: f64,
    /// Its interval.
    pub interval: Interval,
    /// Whether both spread alike; the statistic is F = s₁²/s₂².
    pub test: TestResult,
}

/// The spread of `first` over that of `second`, for numbers as for points.
///
/// # Formula
/// F = s₁²/s₂² with ν₁ and ν₂ degrees of freedom, p twice the smaller tail; the interval of σ₁/σ₂ runs from √(F/F₊) to √(F/F₋),
/// the quantiles at (1 ± level)/2.
///
/// # Assumptions
/// Independent normal observations; points as far in all directions. Long tails are taken for unequal spread.
///
/// # Errors
/// [`StatisticError`] where one of them has no scatter, or degrees of freedom that cannot be computed with.
///
/// # Source
/// G. W. Snedecor, W. G. Cochran, 1989, Statistical Methods, section 6.12 (from memory); NIST/SEMATECH e-Handbook of
/// Statistical Methods, 1.3.5.9.
pub fn spread_ratio(
    first: &PooledSpread,
    second: &PooledSpread,
    level: Level,
) -> Result<SpreadRatio, StatisticError> {
    let statistic = variance(first)? / variance(second)?;
    let [above, below] = [first, second].map(|spread| spread.degrees_of_freedom as f64);
    let distribution = FisherF::new(above, below)?;
    // The lower tail of F is the upper tail of 1/F, which keeps its digits.
    let tails = [
        distribution.upper_tail(statistic),
        FisherF::new(below, above)?.upper_tail(statistic.recip()),
    ];
    let p_value = (2.0 * tails[0].min(tails[1])).min(1.0);
    let bound = |end: Level| (statistic / distribution.quantile(end)).sqrt();
    let interval = Interval {
        lower: bound(level.upper_end()),
        upper: bound(level.lower_end()),
        level: level.probability(),
    };
    let test = TestResult { statistic, p_value, n: first.points + second.points };
    Ok(SpreadRatio { ratio: statistic.sqrt(), interval, test })
}
