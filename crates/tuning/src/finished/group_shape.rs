//! Which way a group is drawn out.

use nalgebra::{Matrix2, Vector2};

/// A long axis nearer than this to an axis of the face lies along it, degrees.
const ALONG_DEG: f64 = 22.5;

/// The shape of a group, with each arrow's own place taken out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct GroupShape {
    /// The standard deviation along the longer axis, mm.
    pub longer_sd_mm: f64,
    /// The standard deviation along the shorter axis, mm.
    pub shorter_sd_mm: f64,
    /// The shots less the arrows.
    pub degrees_of_freedom: usize,
    /// The probability of a shape so far from round, or farther, in a round group.
    pub p_value: f64,
    /// Which way the longer axis runs, where the group is surely not round.
    pub drawn_out: Option<DrawnOut>,
}

/// Which way a group is drawn out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DrawnOut {
    /// Wide and flat.
    Wide,
    /// Tall and narrow.
    Tall,
    /// From low on the left to high on the right.
    RisingRight,
    /// From low on the right to high on the left.
    RisingLeft,
}

impl GroupShape {
    /// Of the scatter Σ d dᵀ of shots about the means of their arrows; not round is said below `sure`. Nothing for fewer
    /// than three degrees of freedom.
    ///
    /// # Formula
    /// W = 4 det A/(tr A)² with p = W^((ν − 1)/2), ν the degrees of freedom: exact in two dimensions for a normal scatter.
    ///
    /// # Source
    /// J. W. Mauchly, 1940, as in [`PlanarSample::sphericity_test`](quarterturn_statistics::PlanarSample::sphericity_test),
    /// which is this with ν = n − 1.
    pub fn of(scatter: &Matrix2<f64>, degrees_of_freedom: usize, sure: f64) -> Option<Self> {
        let trace = scatter.trace();
        if degrees_of_freedom < 3 || trace <= 0.0 {
            return None;
        }
        let roundness = (4.0 * scatter.determinant() / trace.powi(2)).clamp(0.0, 1.0);
        let p_value = roundness.powf(0.5 * (degrees_of_freedom - 1) as f64);
        let apart = (1.0 - roundness).sqrt();
        let sd = |sign: f64| {
            (0.5 * trace * (1.0 + sign * apart) / degrees_of_freedom as f64).max(0.0).sqrt()
        };
        let drawn_out = (p_value < sure).then(|| DrawnOut::of(scatter));
        Some(Self {
            longer_sd_mm: sd(1.0),
            shorter_sd_mm: sd(-1.0),
            degrees_of_freedom,
            p_value,
            drawn_out,
        })
    }
}

impl DrawnOut {
    fn of(scatter: &Matrix2<f64>) -> Self {
        // Twice the angle of the longer axis above the horizontal.
        let twice = Vector2::new(scatter.m11 - scatter.m22, 2.0 * scatter.m12);
        let above_deg = 0.5 * twice.y.atan2(twice.x).to_degrees();
        match above_deg {
            angle if angle.abs() <= ALONG_DEG => Self::Wide,
            angle if angle.abs() >= 90.0 - ALONG_DEG => Self::Tall,
            angle if angle > 0.0 => Self::RisingRight,
            _ => Self::RisingLeft,
        }
    }

    /// Whether it is neither wide nor tall.
    pub const fn is_slanting(self) -> bool {
        matches!(self, Self::RisingRight | Self::RisingLeft)
    }
}
