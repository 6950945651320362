//! An elliptical region of the plane.

use std::f64::consts::PI;

use nalgebra::{Matrix2, Vector2};

use crate::StatisticError;
use crate::circle_probability::PrincipalAxes;

/// The points p with (p − c)ᵀ M⁻¹ (p − c) ≤ 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ellipse {
    /// c, the centre.
    pub centre: Vector2<f64>,
    /// M, symmetric and positive definite: its eigenvalues are the squared half axes, its eigenvectors their directions.
    pub matrix: Matrix2<f64>,
    /// The probability that it was made for, in (0, 1).
    pub level: f64,
    /// Number of observations that it rests on.
    pub n: usize,
}

impl Ellipse {
    /// Half the longer and half the shorter axis.
    pub fn half_axes(&self) -> (f64, f64) {
        let axes = PrincipalAxes::of(&self.matrix);
        (axes.major_sd, axes.minor_sd)
    }

    /// The unit vector along the longer axis; its sign is arbitrary, and it is (1, 0) for a circle.
    pub fn direction(&self) -> Vector2<f64> {
        PrincipalAxes::of(&self.matrix).major
    }

    /// Its area, π times both half axes.
    pub fn area(&self) -> f64 {
        let (longer, shorter) = self.half_axes();
        PI * longer * shorter
    }

    /// Whether `point` lies in it, its edge included.
    pub fn contains(&self, point: Vector2<f64>) -> bool {
        Metric::of(&self.matrix).is_some_and(|metric| metric.squared(point - self.centre) <= 1.0)
    }
}

/// An axis ratio that is rounding alone.
const FLAT: f64 = 1e-7;

/// Refuses a scatter that has no extent in two directions.
pub(crate) fn two_directions(scatter: &Matrix2<f64>) -> Result<(), StatisticError> {
    let axes = PrincipalAxes::of(scatter);
    if axes.major_sd <= 0.0 {
        Err(StatisticError::NoScatter)
    } else if axes.minor_sd <= FLAT * axes.major_sd {
        Err(StatisticError::Collinear)
    } else {
        Ok(())
    }
}

/// Distances measured by a matrix M.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Metric {
    along: Vector2<f64>,
    across: Vector2<f64>,
}

impl Metric {
    /// By this matrix; `None` where it is flat.
    pub(crate) fn of(matrix: &Matrix2<f64>) -> Option<Self> {
        let axes = PrincipalAxes::of(matrix);
        let flat = axes.minor_sd <= FLAT * axes.major_sd;
        let (along, across) = (axes.major / axes.major_sd, axes.minor() / axes.minor_sd);
        (!flat).then_some(Self { along, across })
    }

    /// vᵀ M⁻¹ v.
    pub(crate) fn squared(&self, v: Vector2<f64>) -> f64 {
        v.dot(&self.along).powi(2) + v.dot(&self.across).powi(2)
    }
}
