//! A share of cases, counted in groups whose cases go together.

use crate::distributions::normal;
use crate::{Estimate, Interval, Level};

/// In how many of how many cases something held.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Count {
    /// Cases in which it held; not more than `of`.
    pub held: usize,
    /// All cases.
    pub of: usize,
}

impl Count {
    /// The count of `cases`.
    pub fn of(cases: impl IntoIterator<Item = bool>) -> Self {
        let add = |sum: Self, held| Self { held: sum.held + usize::from(held), of: sum.of + 1 };
        cases.into_iter().fold(Self::default(), add)
    }
}

/// The share of cases in which something held, with its interval at `level`; `None` where there is no case.
///
/// # Formula
/// p = Σhᵢ/N over groups of nᵢ cases, N = Σnᵢ, m groups. The design effect d = max(1, V/(p(1 − p)/(N − 1))) compares the variance
/// between groups V = m/(m − 1) Σ(hᵢ − p nᵢ)²/N² with that of cases on their own; with n = N/d and z the normal quantile at
/// (1 + level)/2 the interval is Wilson's, (p + z²/2n ± z √(p(1 − p)/n + z²/4n²))/(1 + z²/n).
///
/// # Assumptions
/// Independent groups; cases within a group may go together. Groups of one case each give Wilson's interval as it is.
///
/// # Source
/// E. B. Wilson, 1927, Probable inference, the law of succession, and statistical inference, Journal of the American
/// Statistical Association 22, 209; the design effect: L. Kish, 1965, Survey Sampling, chapter 5 (from memory).
pub fn share(groups: &[Count], level: Level) -> Option<Estimate> {
    let all = groups.iter().fold(Count::default(), |sum, one| Count {
        held: sum.held + one.held,
        of: sum.of + one.of,
    });
    if all.of == 0 {
        return None;
    }
    let cases = all.of as f64;
    let p = all.held as f64 / cases;
    let n = cases / design_effect(groups, p, cases);
    let z = normal::quantile(level.upper_end());
    let alone = p * (1.0 - p) / n;
    let (middle, reach) = (p + z * z / (2.0 * n), z * (alone + (z / (2.0 * n)).powi(2)).sqrt());
    let whole = 1.0 + z * z / n;
    let interval = Interval {
        lower: ((middle - reach) / whole).max(0.0),
        upper: ((middle + reach) / whole).min(1.0),
        level: level.probability(),
    };
    Some(Estimate { value: p, standard_error: alone.sqrt(), interval, n: all.of })
}

/// How many times more a share scatters for its cases going together.
fn design_effect(groups: &[Count], p: f64, cases: f64) -> f64 {
    let counted = groups.iter().filter(|group| group.of > 0).count() as f64;
    let alone = p * (1.0 - p) * cases * cases / (cases - 1.0);
    if counted < 2.0 || alone <= 0.0 {
        return 1.0;
    }
    let off = |group: &Count| (group.held as f64 - p * group.of as f64).powi(2);
    let between: f64 = groups.iter().map(off).sum();
    (counted / (counted - 1.0) * between / alone).max(1.0)
}
