//! The radius that holds a share of the points, by counting and by the model.

use super::ranks::ranks;
use crate::distributions::normal;
use crate::order_statistics::neighbours;
use crate::{Estimate, Interval, Level, PlanarSample, PooledSpread, SpreadError, StatisticError};

impl PlanarSample {
    /// The radius about the centroid within which `share` of these points lie; their median radius at [`Level::P50`].
    ///
    /// # Formula
    /// The quantile of the distances rₖ, sorted: at h = (n − 1) `share` between the neighbours of rank ⌊h⌋ and ⌊h⌋ + 1, counted
    /// from 0.
    ///
    /// # Source
    /// Definition 7 of R. J. Hyndman, Y. Fan, 1996, Sample quantiles in statistical packages, The American Statistician 50,
    /// 361 (from memory), the one that most programs take.
    pub fn radius_holding(&self, share: Level) -> f64 {
        let (points, centroid) = (self.points(), self.centroid());
        let place = share.probability() * (self.n() - 1) as f64;
        // A whole number from 0 to n − 1.
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "see above")]
        let rank = place as usize;
        let squared = |at: usize| (points[at] - centroid).norm_squared();
        let (low, high) = neighbours(self.n(), squared, rank);
        low.sqrt() + (place - place.floor()) * (high.sqrt() - low.sqrt())
    }

    /// The radius about the centre of the population that holds `share` of it, without a model of how the points scatter.
    ///
    /// # Formula
    /// With f = √(n/(n − 1)), which makes up for the centroid lying amid its own points: f times
    /// [`radius_holding`](Self::radius_holding), from f times the radius of rank l to that of rank u, where binomial probabilities
    /// leave at most (1 − level)/2 on either side; no lower bound is 0. The standard error is the width over that of a normal
    /// interval.
    ///
    /// # Assumptions
    /// Independent points. The interval covers at least with `level` apart from the centroid being estimated, which is
    /// exact on average for round normal groups only.
    ///
    /// # Errors
    /// [`StatisticError::TooFew`] where the largest radius is no upper bound yet: five points for the median at 90 %.
    pub fn radius_holding_estimate(
        &self,
        share: Level,
        level: Level,
    ) -> Result<Estimate, StatisticError> {
        let n = self.n();
        let (lower, upper) = ranks(n, share, level);
        if n < 2 || upper > n {
            let tail = level.lower_end().probability();
            // shareⁿ ≤ tail; a whole number.
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "see above"
            )]
            let needed = (tail.ln() / share.probability().ln()).ceil() as usize;
            return Err(StatisticError::TooFew { n, needed: needed.max(2) });
        }
        let own = (n as f64 / (n - 1) as f64).sqrt();
        let mut squared = self.squared_distances(self.centroid());
        squared.sort_unstable_by(f64::total_cmp);
        let radius = |rank: usize| rank.checked_sub(1).map_or(0.0, |at| own * squared[at].sqrt());
        let interval =
            Interval { lower: radius(lower), upper: radius(upper), level: level.probability() };
        let width = 2.0 * normal::quantile(level.upper_end());
        Ok(Estimate {
            value: own * self.radius_holding(share),
            standard_error: (interval.upper - interval.lower) / width,
            interval,
            n,
        })
    }
}

impl PooledSpread {
    /// The radius about its centre that holds `share` of a group, where the points are round normal.
    ///
    /// # Formula
    /// √(−2 ln(1 − share)) times [`estimate`](Self::estimate), the interval too: 1.1774 σ holds half.
    ///
    /// # Assumptions
    /// Those of [`estimate`](Self::estimate).
    ///
    /// # Errors
    /// Those of [`estimate`](Self::estimate).
    ///
    /// # Source
    /// Rayleigh's distribution, e.g. M. M. Siddiqui, 1964, Statistical inference for Rayleigh distributions, Radio Science 68D
    /// (from memory).
    pub fn radius_holding(&self, share: Level, level: Level) -> Result<Estimate, SpreadError> {
        let factor = (-2.0 * (-share.probability()).ln_1p()).sqrt();
        let sigma = self.estimate(level)?;
        let Interval { lower, upper, level } = sigma.interval;
        Ok(Estimate {
            value: factor * sigma.value,
            standard_error: factor * sigma.standard_error,
            interval: Interval { lower: factor * lower, upper: factor * upper, level },
            n: sigma.n,
        })
    }
}
