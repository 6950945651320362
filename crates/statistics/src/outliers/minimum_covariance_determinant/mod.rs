//! Robust centre and spread of a planar sample: the minimum covariance determinant.

mod calibration;
mod correction;
mod coverage;
mod exhaustive;
mod fast;
mod flag;
mod points;
mod shape;

use nalgebra::{Matrix2, Vector2};

pub use coverage::Coverage;
pub use flag::PlanarFlag;

use crate::ellipse::{Metric, two_directions};
use crate::statistic_error::at_least;
use crate::{PlanarSample, StatisticError};
use calibration::Calibration;
use points::Points;

/// The share of a normal cloud that is kept when the robust estimate is sharpened.
const KEPT_SHARE: f64 = 0.975;

/// Centre and covariance of the bulk of a sample, wherever the rest lies, and how far each point is from it.
///
/// # Method
/// Of all sets of h points (see [`Coverage`]) the one whose covariance has the least determinant is looked for. Among up to 64
/// points every three are a start, and from each the h points nearest by the covariance so far are taken again and again
/// until they stay the same; among more, random starts and parts are tried first. The covariance of that set, times a
/// factor that makes it right for a normal cloud and one for small samples, says how far each point lies; those within
/// the radius that holds 0.975 of a normal cloud are kept, and their mean and covariance, times such factors again, are the
/// estimate.
///
/// # Assumptions
/// More than half of the points (or three quarters) are independent, of one normal distribution.
///
/// # Source
/// P. J. Rousseeuw, 1985, Multivariate estimation with high breakdown point; P. J. Rousseeuw, K. Van Driessen, 1999, A fast
/// algorithm for the minimum covariance determinant estimator, Technometrics 41, 212 (from memory).
#[derive(Clone, Debug, PartialEq)]
pub struct MinimumCovarianceDeterminant<'a> {
    sample: &'a PlanarSample,
    /// Where the h points chosen stand, counted from 0.
    pub subset: Vec<usize>,
    /// ln of the determinant of the covariance of these h points, divided by h − 1.
    pub log_determinant: f64,
    /// Where the points stand that were kept for centre and covariance.
    pub kept: Vec<usize>,
    /// The robust centre.
    pub centre: Vector2<f64>,
    /// The robust covariance.
    pub covariance: Matrix2<f64>,
    /// (p − centre)ᵀ covariance⁻¹ (p − centre) of each point, in the order of the sample.
    pub squared_distances: Vec<f64>,
    /// The squared distance beyond which a point is flagged: the farthest point of a clean normal sample of this size is so far
    /// out with probability 0.05.
    pub cutoff: f64,
}

impl<'a> MinimumCovarianceDeterminant<'a> {
    /// The fewest points.
    pub const FEWEST: usize = 6;

    /// The robust estimate of `sample`; `seed` draws the starts where there are more than 64 points and says nothing for fewer.
    ///
    /// # Errors
    /// [`StatisticError::TooFew`] below six points, [`StatisticError::Collinear`] where h points or all lie on one line, so that
    /// distances from them have no measure.
    pub fn new(
        sample: &'a PlanarSample,
        coverage: Coverage,
        seed: u64,
    ) -> Result<Self, StatisticError> {
        let n = sample.n();
        at_least(n, Self::FEWEST)?;
        let h = coverage.points(n);
        let points = Points::of(sample.points(), h).ok_or(StatisticError::Collinear)?;
        let found = if n <= exhaustive::MOST {
            exhaustive::search(&points, h)
        } else {
            fast::search(&points, h, seed)
        };
        let subset = points.nearest(&found.ok_or(StatisticError::Collinear)?, h);
        let chosen = part(sample, &subset)?;
        let raw = chosen.covariance().ok_or(StatisticError::Collinear)?;
        let factor =
            correction::consistency(h as f64 / n as f64) * correction::small_sample(n, coverage);
        let within = -2.0 * (1.0 - KEPT_SHARE).ln();
        let distances = distances(sample, chosen.centroid(), &(raw * factor))?;
        let kept: Vec<usize> = (0..n).filter(|&at| distances[at] <= within).collect();
        let bulk = part(sample, &kept)?;
        let calibration = Calibration::of(n, coverage);
        let covariance = bulk.covariance().ok_or(StatisticError::Collinear)?
            * (correction::consistency(KEPT_SHARE) * calibration.factor);
        Ok(Self {
            sample,
            subset,
            log_determinant: raw.determinant().ln(),
            kept,
            centre: bulk.centroid(),
            squared_distances: self::distances(sample, bulk.centroid(), &covariance)?,
            covariance,
            cutoff: calibration.cutoff(n),
        })
    }
}

/// The points at `positions` as a sample of their own, refused where they have no extent in two directions.
fn part(sample: &PlanarSample, positions: &[usize]) -> Result<PlanarSample, StatisticError> {
    let points = positions.iter().map(|&at| sample.points()[at]).collect();
    let part = PlanarSample::new(points)?;
    two_directions(&part.scatter())?;
    Ok(part)
}

fn distances(
    sample: &PlanarSample,
    centre: Vector2<f64>,
    covariance: &Matrix2<f64>,
) -> Result<Vec<f64>, StatisticError> {
    let metric = Metric::of(covariance).ok_or(StatisticError::Collinear)?;
    Ok(sample.points().iter().map(|p| metric.squared(p - centre)).collect())
}
