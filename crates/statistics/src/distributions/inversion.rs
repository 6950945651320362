//! Quantiles from a distribution function and its density.

/// The x in [`lower`, `upper`] at which the increasing function `excess` of slope `density` is 0.
///
/// Newton's steps, replaced by halving the bracket where a step would leave it; at most 200, a dozen are usual.
pub(super) fn root(
    excess: impl Fn(f64) -> f64,
    density: impl Fn(f64) -> f64,
    start: f64,
    mut lower: f64,
    mut upper: f64,
) -> f64 {
    let mut x = start.clamp(lower, upper);
    for _ in 0..200 {
        let off = excess(x);
        let newton = x - off / density(x);
        if off == 0.0 || (newton - x).abs() <= f64::EPSILON * x.abs() {
            return x;
        }
        if off < 0.0 {
            lower = x;
        } else {
            upper = x;
        }
        x = if newton > lower && newton < upper { newton } else { 0.5 * (lower + upper) };
    }
    x
}
