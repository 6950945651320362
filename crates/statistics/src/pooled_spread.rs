//! Standard deviation per axis, pooled over groups of planar points that share it.

use nalgebra::Vector2;
use thiserror::Error;

use crate::distributions::{ChiSquared, DistributionError, root_mean_shortfall};
use crate::{Estimate, Interval, Level, PlanarSample, Sample};

/// Squared distances from their groups' own centres, and how much they can tell.
///
/// Each group of n points has 2(n − 1) degrees of freedom: two coordinates a point, less two for its centre.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PooledSpread {
    /// Sum of squared distances, in the square of the points' unit.
    pub sum_of_squares: f64,
    /// Coordinates less fitted centre coordinates.
    pub degrees_of_freedom: usize,
    /// Number of points.
    pub points: usize,
}

impl PooledSpread {
    /// The pooled spread of `groups`, each about its own centre. A group of one adds a point and no knowledge.
    pub fn of<'a>(groups: impl IntoIterator<Item = &'a PlanarSample>) -> Self {
        groups.into_iter().fold(Self::default(), |pooled, group| Self {
            sum_of_squares: pooled.sum_of_squares + group.scatter().trace(),
            degrees_of_freedom: pooled.degrees_of_freedom + 2 * (group.n() - 1),
            points: pooled.points + group.n(),
        })
    }

    /// The same along `direction` alone, whose length does not matter: each group of n points has n − 1 degrees of freedom.
    ///
    /// A direction of no length gives no scatter.
    pub fn along<'a>(
        direction: Vector2<f64>,
        groups: impl IntoIterator<Item = &'a PlanarSample>,
    ) -> Self {
        let unit = direction.try_normalize(0.0).unwrap_or_default();
        groups.into_iter().fold(Self::default(), |pooled, group| Self {
            sum_of_squares: pooled.sum_of_squares + unit.dot(&(group.scatter() * unit)),
            degrees_of_freedom: pooled.degrees_of_freedom + (group.n() - 1),
            points: pooled.points + group.n(),
        })
    }

    /// The standard deviation per axis with its interval at `level`.
    ///
    /// # Formula
    /// σ̂ = √(S/ν)/c(ν) with S the sum of squares, ν the degrees of freedom and c(ν) = √(2/ν) Γ((ν + 1)/2)/Γ(ν/2), which
    /// makes σ̂ right on average; standard error σ̂ √(1 − c²)/c, interval from √(S/χ²((1 + level)/2; ν)) to
    /// √(S/χ²((1 − level)/2; ν)).
    ///
    /// # Assumptions
    /// Independent points, normal about their group's centre with one σ for both axes and all groups. Distances from a
    /// *known* centre then follow Rayleigh's distribution of scale σ.
    ///
    /// # Errors
    /// [`SpreadError`] without two points in a group, without scatter, or with sums that no group can give.
    ///
    /// # Source
    /// S/σ² is chi-squared: M. M. Siddiqui, 1964, Statistical inference for Rayleigh distributions, Radio Science 68D (from
    /// memory). c(ν) is c₄(ν + 1) of quality control.
    pub fn estimate(&self, level: Level) -> Result<Estimate, SpreadError> {
        if self.degrees_of_freedom == 0 {
            return Err(SpreadError::TooFewPoints { points: self.points });
        }
        if !(self.sum_of_squares > 0.0 && self.sum_of_squares.is_finite()) {
            return Err(SpreadError::NoScatter { sum_of_squares: self.sum_of_squares });
        }
        let freedom = self.degrees_of_freedom as f64;
        let chi_squared = ChiSquared::new(freedom)?;
        let bound = |end: Level| (self.sum_of_squares / chi_squared.quantile(end)).sqrt();
        let shortfall = root_mean_shortfall(freedom);
        let value = (self.sum_of_squares / freedom).sqrt() / shortfall;
        Ok(Estimate {
            value,
            standard_error: value * (1.0 - shortfall * shortfall).sqrt() / shortfall,
            interval: Interval {
                lower: bound(level.upper_end()),
                upper: bound(level.lower_end()),
                level: level.probability(),
            },
            n: self.points,
        })
    }
}

impl PooledSpread {
    /// Both together.
    pub(crate) fn plus(self, other: &Self) -> Self {
        Self {
            sum_of_squares: self.sum_of_squares + other.sum_of_squares,
            degrees_of_freedom: self.degrees_of_freedom + other.degrees_of_freedom,
            points: self.points + other.points,
        }
    }
}

/// Numbers about their own mean, n − 1 degrees of freedom.
impl From<&Sample> for PooledSpread {
    fn from(sample: &Sample) -> Self {
        let degrees_of_freedom = sample.n() - 1;
        let sum_of_squares = sample.variance().unwrap_or(0.0) * degrees_of_freedom as f64;
        Self { sum_of_squares, degrees_of_freedom, points: sample.n() }
    }
}

/// Why a spread cannot be told.
#[derive(Clone, Copy, Debug, Error, PartialEq)]
#[non_exhaustive]
pub enum SpreadError {
    /// No group of two.
    #[error("{points} points, no two of them in one group; a spread needs two")]
    TooFewPoints {
        /// How many there are.
        points: usize,
    },
    /// All points of each group coincide, or the sum is no sum of squares.
    #[error(
        "the squared distances sum to {sum_of_squares}; a spread needs points that do not all coincide"
    )]
    NoScatter {
        /// What was given.
        sum_of_squares: f64,
    },
    /// More degrees of freedom than can be computed with.
    #[error(transparent)]
    Distribution(#[from] DistributionError),
}
