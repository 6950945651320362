//! Fisher's F with two degrees of freedom above, which has a closed form.

use crate::Level;

/// The quantile of Fisher's F with 2 and ν degrees of freedom at `level`.
///
/// # Formula
/// P(F > f) = (1 + 2f/ν)^(−ν/2), hence f = ν/2 ((1 − level)^(−2/ν) − 1).
pub(crate) fn planar_f_quantile(nu: f64, level: Level) -> f64 {
    0.5 * nu * (-2.0 / nu * (-level.probability()).ln_1p()).exp_m1()
}

/// P(F > f) for F with 2 and ν degrees of freedom.
pub(crate) fn planar_f_upper_tail(f: f64, nu: f64) -> f64 {
    (-0.5 * nu * (2.0 * f.max(0.0) / nu).ln_1p()).exp()
}
