//! How much the root of a sum of squares falls short on average.

/// Mean of √(X/ν), X chi-squared with ν degrees of freedom: what a standard deviation is short by in small samples.
///
/// # Formula
/// c(ν) = √(2/ν) Γ((ν + 1)/2)/Γ(ν/2); from ν = 100 on its expansion 1 − 1/4ν + 1/32ν² + 5/128ν³ − 21/2048ν⁴, as the
/// logarithms of large gamma functions cancel. Relative accuracy 1e-11.
///
/// # Source
/// The mean of the chi distribution, e.g. N. L. Johnson, S. Kotz, 1970, Continuous Univariate Distributions 1, chapter 17; known
/// in quality control as c₄(ν + 1). Expansion: F. G. Tricomi, A. Erdélyi, 1951 (both from memory).
pub(crate) fn root_mean_shortfall(nu: f64) -> f64 {
    if nu < 100.0 {
        (2.0 / nu).sqrt() * (libm::lgamma(0.5 * (nu + 1.0)) - libm::lgamma(0.5 * nu)).exp()
    } else {
        let u = 1.0 / nu;
        1.0 + u * (-1.0 / 4.0 + u * (1.0 / 32.0 + u * (5.0 / 128.0 - u * (21.0 / 2048.0))))
    }
}
