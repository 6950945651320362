//! What stands beside each response: covariates and labels.

use nalgebra::{DMatrix, DVector};

use super::MixedError;
use crate::Sample;
use crate::sample::check;

/// One row for each response: its fixed covariates, its block, its level and the covariates of the level's coefficients.
#[derive(Clone, Debug, PartialEq)]
pub struct MixedDesign {
    /// A column for each fixed effect; a column of ones is the intercept.
    pub fixed: DMatrix<f64>,
    /// The block of each row, any number. There may be as many blocks as one likes.
    pub blocks: Vec<u64>,
    /// The level of each row, any number; read only where there are random covariates.
    pub levels: Vec<u64>,
    /// A column for each coefficient that every level has of its own; no column where there is no second factor.
    pub random: DMatrix<f64>,
}

impl MixedDesign {
    /// Refuses what cannot be computed with.
    pub(super) fn validate(&self) -> Result<(), MixedError> {
        let (rows, effects) = self.fixed.shape();
        for (what, found) in [
            ("blocks", self.blocks.len()),
            ("levels", self.levels.len()),
            ("random covariates", self.random.nrows()),
        ] {
            if found != rows {
                return Err(MixedError::CountsDiffer { rows, what, found });
            }
        }
        if effects == 0 || rows <= effects {
            return Err(MixedError::TooFewRows { rows, effects });
        }
        let tame = 0.0..=Sample::LARGEST;
        for (what, covariates) in
            [("fixed covariates", &self.fixed), ("random covariates", &self.random)]
        {
            // A tame length has tame parts; only where it is not are they looked at one by one.
            if covariates.column_iter().any(|column| !tame.contains(&column.norm())) {
                check(covariates.iter().copied().enumerate())
                    .map_err(|error| MixedError::Covariate { what, error })?;
            }
        }
        Ok(())
    }

    /// How large each random covariate is, root mean square.
    pub(super) fn random_sizes(&self) -> Result<DVector<f64>, MixedError> {
        let size =
            |column: usize| self.random.column(column).norm() / (self.random.nrows() as f64).sqrt();
        let sizes = DVector::from_fn(self.random.ncols(), |column, _| size(column));
        match sizes.iter().position(|&size| size <= 0.0) {
            Some(column) => Err(MixedError::Absent { column }),
            None => Ok(sizes),
        }
    }
}
