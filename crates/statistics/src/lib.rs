//! Small-sample, planar and circular statistics, each number with its interval and what it rests on.
//!
//! ```
//! use nalgebra::{Matrix2, Vector2};
//! use quarterturn_statistics::{Level, PlanarSample, PooledSpread, probability_within_circle};
//!
//! # fn main() -> Result<(), Box<dyn std::error::Error>> {
//! // Two groups of points about unlike centres, in any unit of length.
//! let first = PlanarSample::new(vec![Vector2::new(3.0, 1.0), Vector2::new(-4.0, 2.0), Vector2::new(1.0, -6.0)])?;
//! let second = PlanarSample::new(vec![Vector2::new(40.0, 9.0), Vector2::new(36.0, 15.0)])?;
//!
//! // How far points scatter about their own centre, per axis.
//! let spread = PooledSpread::of([&first, &second]).estimate(Level::P90)?;
//! assert_eq!(format!("{:.1}", spread.value), "4.0");
//! assert_eq!(format!("{:.1} to {:.1}", spread.interval.lower, spread.interval.upper), "2.7 to 7.4");
//!
//! // How often such a point falls within 10 of the origin when its centre lies 5 away.
//! let covariance = Matrix2::identity() * spread.value.powi(2);
//! let inside = probability_within_circle(Vector2::new(3.0, 4.0), &covariance, 10.0);
//! assert_eq!(format!("{inside:.2}"), "0.83");
//! # Ok(())
//! # }
//! ```
//!
//! | method | source | check |
//! |---|---|---|
//! | [`Sample`]: mean, variance, interval of the mean | corrected two-pass sums, Chan and others 1983 | certified sets of NIST |
//! | [`Sample::lag_one_autocorrelation`] | Box and Jenkins 1976 | certified sets of NIST |
//! | [`AnalysisOfVariance`]: one way, with its test | Fisher 1925 | all eleven certified sets of NIST; e-Handbook 1.3.5.4 and 7.4.3.3; level by simulation |
//! | [`PlanarSample`]: centroid, covariance | the same | NIST/SEMATECH e-Handbook 6.5.4.1 |
//! | [`PooledSpread`]: σ per axis with interval | chi-squared sums, Siddiqui 1964 | c₄ and χ² tables; coverage by simulation |
//! | [`MeanDirection`]: direction, resultant length, standard deviation | Mardia and Jupp 2000 | turtle directions; scipy |
//! | [`MeanDirection::estimate`]: interval of the direction | Watson and Williams 1956 | coverage by simulation |
//! | [`MeanDirection::concentration`]: von Mises' κ with interval | likelihood; Stephens 1969 | 30 digits; Fisher 1993, A3; coverage by simulation |
//! | [`MeanDirection::rayleigh_test`] | Bennett 1948; Wilkie 1983 | Kluyver's integral; Zar 1999, B.34; level by simulation |
//! | [`SharedTurn`]: whether one direction goes with another | permutations, Fisher 1935 | every order in another program; level by simulation |
//! | [`HarmonicFit`]: constant and harmonics, covariance, test of a harmonic | least squares by QR | discrete Fourier transform; two fits; coverage and level by simulation |
//! | [`harmonic_aliases`]: what few positions cannot tell apart | Gram and Schmidt | folding at even positions; what an alias says, at any positions |
//! | [`PlanarSample`]: mean radius, extreme spread, radii that hold a share | order statistics; Andrew 1979, Shamos 1978 | numpy, scipy; brute force; coverage by simulation |
//! | [`expected_extreme_spread`], [`expected_mean_radius`] | simulation; Rayleigh | another simulation; closed forms |
//! | [`PlanarSample::geometric_median`] | Weiszfeld 1937, Vardi and Zhang 2000 | Newton's method in scipy; any place nearby |
//! | [`PlanarSample::sphericity_test`] | Mauchly 1940, Anderson 2003 | R; level by simulation |
//! | [`PlanarSample::drift`] | multivariate regression, Rencher 2002 | statsmodels; level by simulation |
//! | [`PlanarSample::prediction_ellipse`] | Chew 1966 | coverage by simulation |
//! | [`spread_ratio`], [`bartlett_test`], [`brown_forsythe_test`], [`planar_brown_forsythe_test`] | Bartlett 1937, Brown and Forsythe 1974, Anderson 2006 | NIST/SEMATECH e-Handbook 1.3.5; scipy; levels by simulation |
//! | [`scatter_excess`]: which group scatters more | F adjusted after Holm 1979 | closed form; level by simulation |
//! | [`PlanarEstimate`]: test, region, intervals and distance of a mean or a difference of two | Hotelling 1931, Krishnamoorthy and Yu 2004, Schuirmann 1987 | Johnson and Wichern; Tsong 1996; pingouin; levels by simulation |
//! | [`holm`], [`benjamini_hochberg`] | Holm 1979; Benjamini and Hochberg 1995 | their example; statsmodels |
//! | [`grubbs_test`], [`generalized_esd`] | Grubbs 1950, Rosner 1983 | NIST/SEMATECH e-Handbook 1.3.5.17; ASTM E178; levels by simulation |
//! | [`MinimumCovarianceDeterminant`] | Rousseeuw and Van Driessen 1999, Pison and others 2002 | robustbase; every subset; levels by simulation |
//! | [`share`]: share of cases that go together in groups | Wilson 1927 at Kish's effective number | Newcombe 1998; coverage by simulation |
//! | [`MixedModel`]: fixed effects, variances of blocks, of levels' coefficients and of the rest | restricted likelihood, Patterson and Thompson 1971 | Dyestuff, Pastes, sleepstudy; lme4; dense matrices; coverage by simulation |
//! | [`probability_within_circle`] and its quick form | Di Donato and Jarnagin 1961; trapezoidal rule | Harter 1960; noncentral χ²; 34 digits |
//! | [`distributions::normal`] | `erfc` by `libm`, its inverse by `statrs` | tables; 200 digits |
//! | [`distributions::ChiSquared`] | incomplete gamma function, Loader 2000 | tables; 200 digits; closed form |
//! | [`distributions::StudentT`] | by F; Hill 1970 | tables; 200 digits |
//! | [`distributions::FisherF`] | incomplete beta function, Di Donato and Morris 1992 | tables; 200 digits; closed form; Student's t |
//! | [`distributions::NoncentralChiSquared`] | Poisson mixture, Benton and Krishnamoorthy 2003 | Patnaik 1949; 200 digits |
//!
//! Numbers come in through [`Sample`], [`PlanarSample`] and [`MixedDesign`], which refuse what cannot be computed with;
//! what comes out is an [`Estimate`] with its [`Interval`]. Angles are radians, in names that end in `_rad`; lengths
//! are in whatever unit went in. The crate reads no file, no clock and no randomness.

pub mod distributions;

mod circle_probability;

mod adjusted_p_values;
mod analysis_of_variance;
mod ellipse;
mod estimate;
mod group;
mod harmonic_alias;
mod harmonic_fit;
mod interval;
mod level;
mod mean_direction;
mod means;
mod median;
mod mixed_model;
mod order_statistics;
mod outliers;
mod planar_estimate;
mod planar_f;
mod planar_sample;
mod pooled_spread;
mod rayleigh_test;
mod sample;
mod share;
mod shared_turn;
mod test_result;
mod von_mises;

pub use analysis_of_variance::{AnalysisOfVariance, AnovaError};
mod spread_tests;
mod statistic_error;
mod strands;

pub use adjusted_p_values::{PValueError, benjamini_hochberg, holm};
pub use circle_probability::{approximate_probability_within_circle, probability_within_circle};
pub use ellipse::Ellipse;
pub use estimate::Estimate;
pub use group::{
    ExpectedExtremeSpread, Influence, Summary, expected_extreme_spread, expected_mean_radius,
};
pub use harmonic_alias::{Alias, Wave, harmonic_aliases};
pub use harmonic_fit::{HarmonicError, HarmonicFit};
pub use interval::Interval;
pub use level::{Level, LevelError};
pub use mean_direction::MeanDirection;
pub use means::{DistanceBound, Family};
pub use mixed_model::{MixedDesign, MixedError, MixedFit, MixedModel};
pub use outliers::{
    Coverage, EsdStep, GeneralizedEsd, GrubbsTest, MinimumCovarianceDeterminant, PlanarFlag, Side,
    generalized_esd, grubbs_critical_value, grubbs_test,
};
pub use planar_estimate::PlanarEstimate;
pub use planar_sample::PlanarSample;
pub use pooled_spread::{PooledSpread, SpreadError};
pub use sample::{Sample, SampleError};
pub use share::{Count, share};
pub use shared_turn::SharedTurn;
pub use spread_tests::{
    ScatterExcess, SpreadRatio, bartlett_test, brown_forsythe_test, planar_brown_forsythe_test,
    scatter_excess, spread_ratio,
};
pub use statistic_error::StatisticError;
pub use test_result::TestResult;
