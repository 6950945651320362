//! A lean as a picture tells it.

use nalgebra::{Matrix2, SMatrix};

use super::SOURCES;
use crate::{Angle, Lean};

/// What a standard deviation of each source of error that all shafts of a picture share does to a lean, a column each;
/// radians.
pub(super) type Shared = SMatrix<f64, 2, SOURCES>;

/// The lean of a shaft against the face, with how well it is known.
#[derive(Clone, Debug, PartialEq)]
pub struct SeenLean {
    /// The lean.
    pub lean: Lean,
    /// What is wrong with this shaft alone, radians².
    pub(super) own: Matrix2<f64>,
    pub(super) shared: Shared,
}

impl SeenLean {
    /// How well each of these, all from one picture, is known beside the others: a standard deviation, the root mean square of
    /// both axes.
    ///
    /// What is wrong with all alike, above all how the face is tilted, does not count: leans are only compared.
    ///
    /// # Formula
    /// √(tr(O + (S − S̄)(S − S̄)ᵀ n/(n − 1))/2) for n shafts, with O the covariance of what is wrong with this one alone, S what a
    /// standard deviation of each shared source does to it, and S̄ the mean of that; of a single one O counts alone.
    pub fn spreads(leans: &[Self]) -> Vec<Angle> {
        let count = leans.len() as f64;
        let mean = leans.iter().map(|lean| lean.shared).sum::<Shared>() / count;
        let share = count / (count - 1.0).max(1.0);
        let spread = |lean: &Self| {
            let beside = (lean.shared - mean).norm_squared() * share;
            Angle::from_radians(f64::midpoint(lean.own.trace(), beside).sqrt())
        };
        leans.iter().map(spread).collect()
    }
}
