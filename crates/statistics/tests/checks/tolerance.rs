//! Every tolerance, with its reason.

/// Half a unit of the third printed decimal, and a little for a last digit rounded from a rounded one.
pub const THREE_DECIMALS: f64 = 0.51e-3;
/// The same for the fourth.
pub const FOUR_DECIMALS: f64 = 0.51e-4;
/// The same for the fifth decimal.
pub const FIVE_DECIMALS: f64 = 0.51e-5;
/// The same for the sixth decimal.
pub const SIX_DECIMALS: f64 = 0.51e-6;
/// The same for the seventh.
pub const SEVEN_DECIMALS: f64 = 0.51e-7;
/// The same for the tenth.
pub const TEN_DECIMALS: f64 = 0.51e-10;
/// Relative: twelve printed digits.
pub const TWELVE_DIGITS: f64 = 0.51e-11;

/// Relative: a quantile of eight printed digits beside variances that are known no better than [`FLAT_TOP`].
pub const TABLE: f64 = 2e-6;

/// Relative: what the distribution functions promise, of each tail.
pub const DISTRIBUTION: f64 = 1e-11;
/// Relative: what the quantiles promise.
pub const QUANTILE: f64 = 1e-12;
/// Absolute: what the probability of a circle promises.
pub const CIRCLE: f64 = 1e-11;
/// Absolute: the same where the smallest standard deviation is a ten-millionth of the radius, sixteen digits less seven.
pub const FLAT_CIRCLE: f64 = 1e-9;
/// Absolute: what the quick probability of a circle promises.
pub const QUICK_CIRCLE: f64 = 1e-4;

/// Relative: a concentration whose ratio of Bessel functions is 1 less little, as far as 1e-5.
pub const BESSEL_RATIO: f64 = 1e-10;
/// Absolute: what Rayleigh's test promises.
pub const RAYLEIGH: f64 = 1e-5;

/// Relative: sums of a few dozen terms, each rounded a few times.
pub const ALGEBRA: f64 = 1e-12;
/// Absolute: the same where the terms are of size ten.
pub const SUM_OF_TENS: f64 = 10.0 * ALGEBRA;
/// Relative: sums of squares of values that share their first seven digits, after which doubles keep nine of their
/// differences.
pub const SEVEN_SHARED_DIGITS: f64 = 1e-7;
/// The same, thirteen digits shared: the values themselves are off by as much as a tenth of their differences in a hundred.
pub const THIRTEEN_SHARED_DIGITS: f64 = 1e-2;
/// Relative: numbers of fifteen digits whose decimals no double holds, the mean a million times the spread.
pub const SPREAD_OF_A_MILLIONTH: f64 = 1e-9;
/// The same, the mean ten million times the spread.
pub const SPREAD_OF_A_TEN_MILLIONTH: f64 = 1e-8;

/// Absolute: a restricted log-likelihood of a few hundred at its optimum, where both sides are flat.
pub const LIKELIHOOD: f64 = 1e-8;
/// Relative: where an optimiser without derivatives stops, the root of the last digit of the likelihood it sees.
pub const OPTIMUM: f64 = 1e-5;
/// Relative: what an optimum is known to whose likelihood is known to twelve digits, about their root.
pub const FLAT_TOP: f64 = 1e-6;
/// Relative: the same after the rows were summed in another order and a shift ten thousand times their scatter was
/// taken off.
pub const MOVED: f64 = 1e-5;
/// Absolute: what such an optimiser leaves of a variance that is zero beside others of about fifty.
pub const VARIANCE_AT_ZERO: f64 = 1e-5;
/// Relative: the reach of an interval whose degrees of freedom rest on second derivatives by differences.
pub const DEGREES_OF_FREEDOM: f64 = 1e-5;

/// Absolute: a table printed to five decimals, its first row replaced by what is exact.
pub const SIMULATED_TABLE: f64 = 4e-4;

/// Relative: a table of simulated factors with four digits.
pub const SIMULATED_CALIBRATION: f64 = 1e-4;

/// Standard errors that a seeded simulation may be off by: one in sixteen thousand is further out.
pub const STANDARD_ERRORS: f64 = 4.0;

/// Fails unless the two differ by at most `tolerance`.
#[track_caller]
pub fn assert_close(actual: f64, expected: f64, tolerance: f64) {
    let off = (actual - expected).abs();
    assert!(off <= tolerance, "{actual} is off {expected} by {off:e}, more than {tolerance:e}");
}

/// Fails unless the two differ by at most the share `tolerance` of what is expected.
#[track_caller]
pub fn assert_relative(actual: f64, expected: f64, tolerance: f64) {
    assert_close(actual, expected, tolerance * expected.abs());
}
