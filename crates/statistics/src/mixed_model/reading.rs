//! Estimates, standard errors and intervals at the optimum.

use std::f64::consts::TAU;

use nalgebra::{DMatrix, DVector};

use super::search::Optimum;
use super::{MixedError, MixedFit};
use crate::distributions::{ChiSquared, StudentT};
use crate::{Estimate, Interval, Level};

/// The optimum with how well the variances are known.
///
/// # Formula
/// The information about (ln σ², κ₀, κ₁, …), κⱼ = ln tⱼ, tⱼ = λⱼ + 1/mⱼ, is on average
/// ```text
/// ½ ( ν          tⱼ tr PVⱼ      )
///   ( tⱼ tr PVⱼ  tⱼtₖ tr PVⱼPVₖ )
/// ```
/// and its inverse A their covariance. A quantity q that varies with variance gᵀAg, g its slopes, has the 2q²/gᵀAg degrees of
/// freedom of a chi-squared one of that mean and variance (Satterthwaite).
pub struct Reading<'a> {
    optimum: &'a Optimum<'a>,
    level: Level,
    /// σ².
    residual_variance: f64,
    /// A.
    covariance: DMatrix<f64>,
}

/// A variance that keeps less than this share of its information beside the others is told from them by rounding alone.
const CONFOUNDED: f64 = 1e-9;

impl<'a> Reading<'a> {
    pub fn new(optimum: &'a Optimum<'a>, level: Level) -> Result<Self, MixedError> {
        let residual_variance = optimum.equations.sum_of_squares / optimum.equations.freedom();
        let covariance = covariance(optimum).ok_or(MixedError::Confounded)?;
        Ok(Self { optimum, level, residual_variance, covariance })
    }

    /// The whole fit; `least_squares` are the effects of the orthonormal covariates taken off the response beforehand.
    pub fn fit(&self, least_squares: &DVector<f64>) -> Result<MixedFit, MixedError> {
        let rows = self.optimum.equations.rows;
        let coefficients = (1..=rows.coefficients).map(|j| self.variance(j, rows.levels));
        Ok(MixedFit {
            fixed: self.fixed(least_squares)?,
            block_variance: self.variance(0, rows.blocks.count())?,
            coefficient_variances: coefficients.collect::<Result<_, _>>()?,
            residual_variance: self.residual_variance()?,
            log_likelihood: self.log_likelihood(),
        })
    }

    fn log_likelihood(&self) -> f64 {
        let equations = &self.optimum.equations;
        let scale = 1.0 + (TAU * self.residual_variance).ln();
        -0.5 * (equations.log_det + 2.0 * equations.rows.log_det + equations.freedom() * scale)
    }

    /// β = R⁻¹γ, γ the orthonormal effects, with Student's quantile.
    fn fixed(&self, least_squares: &DVector<f64>) -> Result<Vec<Estimate>, MixedError> {
        let Optimum { equations, derivatives, .. } = self.optimum;
        let (own, effects) = (equations.rows.all_coefficients(), equations.rows.effects());
        let gamma = least_squares + equations.solution.rows(own, effects);
        let spread = equations.inverse.view((own, own), (effects, effects)).into_owned();
        let rows = equations.rows.root.row_iter();
        let estimates = rows.map(|row| {
            let along = |matrix: &DMatrix<f64>| (row * matrix).dot(&row) * self.residual_variance;
            let (value, variance) = (row.tr_dot(&gamma), along(&spread));
            let ratios = derivatives.covariances.iter().enumerate();
            let slopes = ratios.map(|(j, slope)| self.optimum.sum(j) * along(slope));
            let slopes = DVector::from_iterator(
                self.covariance.nrows(),
                std::iter::once(variance).chain(slopes),
            );
            let freedom = 2.0 * variance.powi(2) / self.variance_of(&slopes);
            let student = StudentT::new(freedom.min(StudentT::LARGEST))?;
            let standard_error = variance.sqrt();
            let reach = student.quantile(self.level.upper_end()) * standard_error;
            let interval = self.interval(value - reach, value + reach);
            Ok(Estimate { value, standard_error, interval, n: equations.rows.n() })
        });
        estimates.collect()
    }

    /// σ² with chi-squared bounds.
    fn residual_variance(&self) -> Result<Estimate, MixedError> {
        let (value, relative) = (self.residual_variance, self.covariance[(0, 0)]);
        let interval = self.chi_squared(value, 2.0 / relative)?;
        let n = self.optimum.equations.rows.n();
        Ok(Estimate { value, standard_error: value * relative.sqrt(), interval, n })
    }

    /// σ²λⱼ of so many `groups`, in the unit of its covariate as it came. What the groups show varies by that much and by what
    /// the rest of the model adds; that sum has about as many degrees of freedom as groups less one, from which and from the
    /// standard error follows how large it is.
    fn variance(&self, j: usize, groups: usize) -> Result<Estimate, MixedError> {
        let Optimum { equations, .. } = self.optimum;
        let ratio = equations.ratios[j];
        let unit = self.residual_variance
            / j.checked_sub(1).map_or(1.0, |j| equations.rows.sizes[j].powi(2));
        let mut slopes = DVector::zeros(self.covariance.nrows());
        (slopes[0], slopes[j + 1]) = (unit * ratio, unit * self.optimum.sum(j));
        let (value, standard_error) = (unit * ratio, self.variance_of(&slopes).sqrt());
        let freedom = (groups as f64 - 1.0).max(1.0);
        let shown = standard_error * (0.5 * freedom).sqrt();
        let bounds = self.chi_squared(shown, freedom)?;
        let less = |bound: f64| (bound - shown + value).max(0.0);
        let interval = self.interval(less(bounds.lower), less(bounds.upper));
        Ok(Estimate { value, standard_error, interval, n: groups })
    }

    /// Bounds of a variance that was estimated with so many degrees of freedom.
    fn chi_squared(&self, value: f64, freedom: f64) -> Result<Interval, MixedError> {
        let freedom = freedom.min(ChiSquared::LARGEST);
        let chi_squared = ChiSquared::new(freedom)?;
        let bound = |end: Level| value * freedom / chi_squared.quantile(end);
        Ok(self.interval(bound(self.level.upper_end()), bound(self.level.lower_end())))
    }

    fn interval(&self, lower: f64, upper: f64) -> Interval {
        Interval { lower, upper, level: self.level.probability() }
    }

    /// gᵀAg.
    fn variance_of(&self, slopes: &DVector<f64>) -> f64 {
        (&self.covariance * slopes).dot(slopes)
    }
}

/// A; `None` where some variance cannot be told from the others.
fn covariance(optimum: &Optimum) -> Option<DMatrix<f64>> {
    let Optimum { equations, derivatives, .. } = optimum;
    let count = equations.ratios.len();
    let mut information = DMatrix::from_element(1 + count, 1 + count, 0.5 * equations.freedom());
    for j in 0..count {
        let own = 0.5 * optimum.sum(j);
        (information[(0, j + 1)], information[(j + 1, 0)]) =
            (own * derivatives.traces[j], own * derivatives.traces[j]);
        for k in 0..count {
            information[(j + 1, k + 1)] = own * optimum.sum(k) * derivatives.trace_products[(j, k)];
        }
    }
    let roots = information.diagonal().map(f64::sqrt);
    let shares = information.component_div(&(&roots * roots.transpose()));
    let root = shares.cholesky()?;
    let least = root.l_dirty().diagonal().min();
    (least.powi(2) > CONFOUNDED)
        .then(|| root.inverse().component_div(&(&roots * roots.transpose())))
}
