//! Intervals along directions that hold together.

use nalgebra::Vector2;

use crate::distributions::StudentT;
use crate::{Estimate, Interval, Level, PlanarEstimate, StatisticError};

/// Over what a level is to hold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Family {
    /// Over so many intervals, settled beforehand (Bonferroni): 1 for a single one, 2 for both axes.
    Planned(usize),
    /// Over the intervals along all directions at once (Scheffé), also one that the data suggested.
    AllDirections,
}

impl PlanarEstimate {
    /// The value along `direction`, whose length does not matter, with its interval; all intervals of the `family` cover together
    /// with probability `level`.
    ///
    /// # Formula
    /// uᵀ value ± c √(uᵀ V u), u the unit vector. c is Student's quantile with ν degrees of freedom at 1 − (1 − level)/2k for k
    /// planned intervals, the root of the quantile of T² for all directions.
    ///
    /// # Errors
    /// [`StatisticError::NoDirection`] for a direction of no length or one that is not finite.
    ///
    /// # Source
    /// R. A. Johnson, D. W. Wichern, 2007, Applied Multivariate Statistical Analysis, section 5.4 (from memory).
    pub fn along(
        &self,
        direction: Vector2<f64>,
        family: Family,
        level: Level,
    ) -> Result<Estimate, StatisticError> {
        let unit = direction.try_normalize(0.0).filter(|unit| unit.iter().all(|c| c.is_finite()));
        let unit = unit.ok_or(StatisticError::NoDirection)?;
        let factor = match family {
            Family::Planned(intervals) => {
                let miss = (1.0 - level.probability()) / intervals.max(1) as f64;
                let single = Level::new(1.0 - miss).unwrap_or(level);
                StudentT::new(self.degrees_of_freedom)?.quantile(single.upper_end())
            }
            Family::AllDirections => self.hotelling_quantile(level).sqrt(),
        };
        let value = unit.dot(&self.value);
        let standard_error = unit.dot(&(self.covariance * unit)).sqrt();
        let reach = factor * standard_error;
        let (lower, upper) = (value - reach, value + reach);
        let interval = Interval { lower, upper, level: level.probability() };
        Ok(Estimate { value, standard_error, interval, n: self.n })
    }
}
