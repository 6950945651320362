//! Every tolerance of this crate's checks, with its reason.

/// A few operations on doubles, each right to 1.1e-16 of its value; relative.
pub const ROUNDING: f64 = 1e-13;

/// A posterior against the dense script: covariances of a metre beside one of centimetres, solved twice; relative
/// to the standard deviation or the variance compared.
pub const DENSE: f64 = 1e-9;

/// The same posterior summed in another order, twelve rounds of learning over; mm, mm² and probabilities.
pub const ANOTHER_ORDER: f64 = 1e-6;

/// A value printed with one decimal: half a unit of the last, and a little for a reference that may land anywhere
/// within a metre and not anywhere at all.
pub const ONE_DECIMAL: f64 = 0.06;

/// How much of a common shift of 100 mm may be left in a miss, for the same reason; mm.
pub const SHIFT_LEFT_MM: f64 = 0.1;

/// How near to the truth forty shots without scatter bring every position, the pull of the prior included; mm.
pub const NEARLY_TOLD_MM: f64 = 4.0;

/// How near to the truth the common point of a few shafts comes that fly as planted: the pull of the prior, and the
/// step to which the point is looked for, 0.05 of a tolerance of 25 mm; mm.
pub const COMMON_POINT_MM: f64 = 8.0;

/// The variance of 32 points that stand for the standard normal on one axis: each weighs a thirty-second, the
/// outermost alone carry a fifth of it.
pub const VARIANCE_OF_FEW_POINTS: f64 = 0.25;

/// A shot taken out of the posterior against one that weighs a million-millionth; relative to the standard
/// deviation or the variance compared.
pub const TAKEN_OUT: f64 = 1e-6;

/// How often the 90 % regions are asked to cover the truth, two standard errors of the sampling apart.
pub const COVERAGE: std::ops::RangeInclusive<f64> = 0.87..=0.93;

/// The same of some sixty 90 % intervals, four a session.
pub const COVERAGE_OF_FEW: std::ops::RangeInclusive<f64> = 0.78..=1.0;

/// How far the share of 480 shafts that do not repeat may be from what is said of them on average: two standard errors of the
/// count, and the 0.1 said before the first shot being of three widths where one is planted.
pub const SHARE_OF_LOOSE: f64 = 0.035;

/// How far the share inside the tolerance may be from the probability stated, two standard errors of the sampling apart.
pub const WITHIN_IS_RIGHT_TO: f64 = 0.05;

/// What may be said wrongly in one of twenty, counted in 800 cases and more: two standard errors of the count, and what the
/// approximate degrees of freedom of unequal scatter add (6 % at most, as the statistics say of themselves).
pub const WRONG_IN_TWENTY: f64 = 0.065;

/// How often the lower bound of a chance at 95 % must hold, counted in 400 cases: two standard errors of the count less.
/// Of few shots on the spot it always holds, since no mean can come nearer to the spot than on it.
pub const BOUND_HOLDS: std::ops::RangeInclusive<f64> = 0.93..=1.0;

/// The same least squares by a factorisation of whitened rows, printed with all digits; relative.
pub const ANOTHER_ROAD: f64 = 1e-11;

/// Two ways to a chance on a plate: an integral, and a mixture of chi-squared tails.
pub const PLATE_CHANCE: f64 = 1e-12;

/// The largest upper end of one-sided intervals, looked for over the directions to 1e-10 by R; mm.
pub const LARGEST_OF_INTERVALS: f64 = 1e-8;

/// Two simulations of one power about 0.7, each of 3000: three standard errors of their difference.
pub const SIMULATED_POWER: f64 = 0.036;

/// Fails unless `actual` lies within `allowed` of `expected`; a NaN fails.
#[track_caller]
pub fn assert_within(actual: f64, expected: f64, allowed: f64) {
    let apart = (actual - expected).abs();
    assert!(apart <= allowed, "{actual} is {apart:e} from {expected}, allowed {allowed:e}");
}
