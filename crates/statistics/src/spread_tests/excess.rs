//! Which of many groups scatters more than the others.

use super::variance;
use crate::distributions::FisherF;
use crate::{PooledSpread, StatisticError, TestResult, holm};

/// One group against all others together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScatterExcess {
    /// How many times as wide the group spreads as the others: a ratio of standard deviations.
    pub ratio: f64,
    /// Whether it spreads no more than they do; the statistic is the ratio of variances, n the points of the group.
    pub test: TestResult,
    /// The p-value that allows for so many groups having been looked at (Holm).
    pub adjusted_p_value: f64,
}

/// Each of `groups` against all others pooled, in their order; `None` for one that cannot be compared.
///
/// # Formula
/// F = s²ᵢ/s²₋ᵢ, one-sided, with νᵢ and ν − νᵢ degrees of freedom; p-values adjusted by [`holm`].
///
/// # Assumptions
/// Independent normal observations, the others of one spread. Where several groups are wide they hide each other.
///
/// # Errors
/// [`StatisticError`] for fewer than two groups, or degrees of freedom that cannot be computed with.
///
/// # Source
/// S. Holm, 1979, A simple sequentially rejective multiple test procedure, Scandinavian Journal of Statistics 6, 65; the ratio
/// as any two-sample F test.
pub fn scatter_excess(
    groups: &[PooledSpread],
) -> Result<Vec<Option<ScatterExcess>>, StatisticError> {
    if groups.len() < 2 {
        return Err(StatisticError::TooFewGroups { groups: groups.len() });
    }
    let mut tests = groups
        .iter()
        .enumerate()
        .map(|(at, group)| {
            let others = groups.iter().enumerate().filter(|(other, _)| *other != at);
            let rest = others.fold(PooledSpread::default(), |sum, (_, other)| sum.plus(other));
            against(group, &rest)
        })
        .collect::<Result<Vec<_>, _>>()?;
    let p_values: Vec<f64> = tests.iter().flatten().map(|excess| excess.test.p_value).collect();
    let adjusted = holm(&p_values)?;
    tests.iter_mut().flatten().zip(adjusted).for_each(|(excess, p)| excess.adjusted_p_value = p);
    Ok(tests)
}

/// `group` against `rest`, not yet adjusted; `None` where one of them has no scatter.
fn against(
    group: &PooledSpread,
    rest: &PooledSpread,
) -> Result<Option<ScatterExcess>, StatisticError> {
    let (Ok(own), Ok(others)) = (variance(group), variance(rest)) else {
        return Ok(None);
    };
    let statistic = own / others;
    let freedom = [group, rest].map(|spread| spread.degrees_of_freedom as f64);
    let p_value = FisherF::new(freedom[0], freedom[1])?.upper_tail(statistic);
    let test = TestResult { statistic, p_value, n: group.points };
    Ok(Some(ScatterExcess { ratio: statistic.sqrt(), test, adjusted_p_value: p_value }))
}
