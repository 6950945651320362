//! The generalized extreme Studentized deviate: several outliers at once.

use super::grubbs::{Side, farthest, grubbs_critical_value};
use crate::statistic_error::at_least;
use crate::{Influence, Level, Sample, StatisticError};

/// All steps of the test, and which values it flags.
#[derive(Clone, Debug, PartialEq)]
pub struct GeneralizedEsd {
    /// One for each value that was taken away, in that order; fewer than asked for where the rest no longer scattered.
    pub steps: Vec<EsdStep>,
    /// How many values are flagged: those of the steps up to the last whose statistic exceeds its critical value.
    pub outliers: usize,
    /// What would change without the flagged values; `None` where there are none.
    pub influence: Option<Influence<f64>>,
}

/// The value farthest from the mean of what the earlier steps left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EsdStep {
    /// Where it stands in the sample, counted from 0.
    pub position: usize,
    /// R, its distance in standard deviations of what was left.
    pub statistic: f64,
    /// λ, which R must exceed.
    pub critical: f64,
}

impl GeneralizedEsd {
    /// Where the flagged values stand, counted from 0, the farthest first.
    pub fn flagged(&self) -> impl Iterator<Item = usize> {
        self.steps[..self.outliers].iter().map(|step| step.position)
    }
}

/// Looks for up to `most` outliers on either side; a sample without any is left alone with probability `level`.
///
/// # Formula
/// Rᵢ = max |x − x̄|/s over what the steps before left, λᵢ the two-sided critical value of Grubbs' test for so many. The number of
/// outliers is the last i with Rᵢ > λᵢ: earlier steps may fail where several outliers hide each other, so all are taken.
///
/// # Assumptions
/// Independent normal values but for the outliers; the level is accurate from 25 values on, nearly so from 15 (handbook, below).
///
/// # Errors
/// [`StatisticError`] for fewer than `most` + 2 values (three at least), or values that are all equal.
///
/// # Source
/// B. Rosner, 1983, Percentage points for a generalized ESD many-outlier procedure, Technometrics 25, 165 (from memory);
/// NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.5.17.3.
pub fn generalized_esd(
    sample: &Sample,
    most: usize,
    level: Level,
) -> Result<GeneralizedEsd, StatisticError> {
    at_least(sample.n(), most.saturating_add(2).max(3))?;
    farthest(sample, Side::Either)?;
    let (mut steps, mut rest) = (Vec::new(), sample.clone());
    let mut positions: Vec<usize> = (0..sample.n()).collect();
    while steps.len() < most
        && let Ok((at, statistic)) = farthest(&rest, Side::Either)
        && let Some(critical) = grubbs_critical_value(rest.n(), Side::Either, level)
    {
        steps.push(EsdStep { position: positions.remove(at), statistic, critical });
        let Some(left) = rest.without(&[at]) else { break };
        rest = left;
    }
    let last = steps.iter().rposition(|step| step.statistic > step.critical);
    let outliers = last.map_or(0, |step| step + 1);
    let flagged: Vec<usize> = steps[..outliers].iter().map(|step| step.position).collect();
    let influence = if outliers == 0 { None } else { sample.influence(&flagged) };
    Ok(GeneralizedEsd { steps, outliers, influence })
}
