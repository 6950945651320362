//! Bartlett's test of equal spread.

use super::variance;
use crate::distributions::ChiSquared;
use crate::{PooledSpread, StatisticError, TestResult};

/// Tests whether groups spread alike, for numbers (`PooledSpread::from`) as for points (`PooledSpread::of([group])`).
///
/// # Formula
/// With sᵢ² the variance of group i on νᵢ degrees of freedom, ν = Σνᵢ and s² = Σνᵢ sᵢ²/ν, the statistic
/// (ν ln s² − Σ νᵢ ln sᵢ²)/(1 + (Σ 1/νᵢ − 1/ν)/(3(k − 1))) is about χ² with k − 1 degrees of freedom.
///
/// # Assumptions
/// Independent normal observations; points as far in all directions. Long tails are taken for unequal spread: where they are
/// feared take [`brown_forsythe_test`](crate::brown_forsythe_test).
///
/// # Errors
/// [`StatisticError`] for fewer than two groups, or one without scatter.
///
/// # Source
/// M. S. Bartlett, 1937, Properties of sufficiency and statistical tests, Proceedings of the Royal Society A 160, 268 (from
/// memory); NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.7.
pub fn bartlett_test(groups: &[PooledSpread]) -> Result<TestResult, StatisticError> {
    if groups.len() < 2 {
        return Err(StatisticError::TooFewGroups { groups: groups.len() });
    }
    let all = groups.iter().fold(PooledSpread::default(), PooledSpread::plus);
    let freedom = all.degrees_of_freedom as f64;
    let (mut logarithms, mut reciprocals) = (freedom * variance(&all)?.ln(), -freedom.recip());
    for group in groups {
        let own = group.degrees_of_freedom as f64;
        logarithms -= own * variance(group)?.ln();
        reciprocals += own.recip();
    }
    let comparisons = (groups.len() - 1) as f64;
    // Rounding may leave equal variances a little below nought.
    let statistic = logarithms.max(0.0) / (1.0 + reciprocals / (3.0 * comparisons));
    let p_value = ChiSquared::new(comparisons)?.upper_tail(statistic);
    Ok(TestResult { statistic, p_value, n: all.points })
}
