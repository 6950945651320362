//! Quantiles from a distribution function and its density.

/// A step shorter than this share of x may be rounding.
const ROUNDING: f64 = 1e-12;

/// The x in [`lower`, `upper`] at which the increasing function `excess` of slope `density` is 0.
///
/// Newton's steps, replaced by halving the bracket where a step would leave it; at most 200, a dozen are usual. They end where
/// they no longer shrink, which is where rounding alone makes them.
pub(super) fn root(
    excess: impl Fn(f64) -> f64,
    density: impl Fn(f64) -> f64,
    start: f64,
    mut lower: f64,
    mut upper: f64,
) -> f64 {
    let mut x = start.clamp(lower, upper);
    let mut last = f64::INFINITY;
    for _ in 0..200 {
        let off = excess(x);
        let newton = x - off / density(x);
        let step = (newton - x).abs();
        let rounding = step >= last && last <= ROUNDING * x.abs();
        if off == 0.0 || step <= f64::EPSILON * x.abs() || rounding {
            return x;
        }
        last = step;
        if off < 0.0 {
            lower = x;
        } else {
            upper = x;
        }
        x = if newton > lower && newton < upper { newton } else { 0.5 * (lower + upper) };
    }
    x
}
