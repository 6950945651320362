//! The distributions that this crate needs, one file each: arguments guarded once, in the constructors.
//!
//! | distribution | offers | degrees of freedom, each | accuracy of tails, of quantiles |
//! |---|---|---|---|
//! | [`normal`] | cdf, between, quantile | | 1e-12, 1e-13 |
//! | [`ChiSquared`] | cdf, upper tail, quantile | up to 10⁷ | 1e-11, 1e-12 |
//! | [`StudentT`] | cdf, upper tail, quantile | up to 10¹² | 1e-12, 1e-12 |
//! | [`FisherF`] | cdf, upper tail, quantile | up to 10⁷ | 1e-11, 1e-12 |
//! | [`NoncentralChiSquared`] | cdf, upper tail, quantile | up to 10⁴, as the noncentrality | 1e-12, 1e-12 |
//!
//! All relative, of each tail down to 1e-100 and of quantiles from level 1e-100 to 1 − 1e-12, held against 1263 points
//! in 200 digits (`fixtures/statistics/make_distributions.py`).
//!
//! The inverse of `erfc` is that of `statrs`. Its incomplete gamma and beta functions are not used: on the same points,
//! tails above 1e-13, the first loses digits where large logarithms cancel (2e-11 off at 10⁴ degrees of freedom, 1e-8
//! at 10⁷), and the second stops after 140 terms and has no way to be told 1 − x (off by 4e-3 in F with 10⁶ and 10⁷
//! degrees of freedom, by 1e-6 with 5 and 0.7).

mod chi_squared;
mod error;
mod fisher_f;
mod gamma_ratio;
mod incomplete_beta;
mod incomplete_gamma;
mod inversion;
mod mass;
mod noncentral_chi_squared;
pub mod normal;
mod student_t;
mod tails;

pub use chi_squared::ChiSquared;
pub use error::DistributionError;
pub use fisher_f::FisherF;
pub(crate) use gamma_ratio::root_mean_shortfall;
pub use noncentral_chi_squared::NoncentralChiSquared;
pub use student_t::StudentT;
