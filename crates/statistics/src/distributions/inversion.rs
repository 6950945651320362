//! Quantiles of positive variables from their tails and their density.

use super::tails::Tails;

/// A step shorter than this may be rounding.
const ROUNDING: f64 = 1e-12;

/// The x > 0 at which the tails are those `wanted`, which sum to 1: looked for by its logarithm, with the logarithm of
/// the smaller tail, so that digits are kept however far out it lies.
///
/// `mass` is x times the density at x. Newton's steps, replaced by halving the bracket where a step would leave it; at
/// most 200, a dozen are usual. They end where they no longer shrink, which is where rounding alone makes them.
pub(super) fn quantile(
    wanted: Tails,
    tails: impl Fn(f64) -> Tails,
    mass: impl Fn(f64) -> f64,
    start: f64,
) -> f64 {
    let is_lower = wanted.lower <= wanted.upper;
    let side = |tails: Tails| if is_lower { tails.lower } else { tails.upper };
    let (mut lower, mut upper) = (f64::MIN_POSITIVE.ln(), f64::MAX.ln());
    let mut log = start.ln().clamp(lower, upper);
    let mut last = f64::INFINITY;
    for _ in 0..200 {
        let x = log.exp();
        let tail = side(tails(x));
        // Of the lower tail, that is; of the upper one less means farther out.
        let off = if is_lower { (tail / side(wanted)).ln() } else { (side(wanted) / tail).ln() };
        let newton = log - off * tail / mass(x);
        let step = (newton - log).abs();
        if off == 0.0 || step <= f64::EPSILON || (step >= last && last <= ROUNDING) {
            break;
        }
        last = step;
        if off < 0.0 {
            lower = log;
        } else {
            upper = log;
        }
        log = if newton > lower && newton < upper { newton } else { 0.5 * (lower + upper) };
    }
    log.exp()
}
