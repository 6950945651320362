//! What makes the estimates right on average for a normal sample.

use super::Coverage;

/// The factor that makes a covariance of the inner `share` of a normal cloud that of the whole.
///
/// # Formula
/// With q the squared radius that holds the share α, α/P(χ²₄ ≤ q) = α/(1 − (1 − α)(1 − ln(1 − α))); 1 for the whole.
///
/// # Source
/// C. Croux, G. Haesbroeck, 1999, Influence function and efficiency of the minimum covariance determinant scatter matrix
/// estimator, Journal of Multivariate Analysis 71, 161 (from memory).
pub(super) fn consistency(share: f64) -> f64 {
    if share >= 1.0 {
        return 1.0;
    }
    let beyond = 1.0 - share;
    share / (1.0 - beyond * (1.0 - beyond.ln()))
}

/// The factor on top of [`consistency`] for a sample of `n` points and the covariance of the h points chosen.
///
/// # Source
/// G. Pison, S. Van Aelst, G. Willems, 2002, Small sample corrections for LTS and MCD, Metrika 55, 111, in two dimensions; for
/// three quarters between what they give for 0.5 and 0.875 (coefficients as in R's robustbase).
pub(super) fn small_sample(n: usize, coverage: Coverage) -> f64 {
    let n = n as f64;
    let half = 1.0 - 0.673_292_623_522_027_f64.exp() / n.powf(0.691_365_864_961_895);
    let most = 1.0 - 0.446_537_815_635_445_f64.exp() / n.powf(1.066_907_829_959_19);
    let between = match coverage {
        Coverage::Half => half,
        Coverage::ThreeQuarters => half + (most - half) * 0.25 / 0.375,
    };
    between.recip()
}
