//! The ellipse of a planar covariance.

use std::f64::consts::TAU;

use nalgebra::Matrix2;

use crate::principal_axes::PrincipalAxes;
use crate::{Angle, GeometryError, Millimetres, Offset, Point};

#[cfg(test)]
mod tests;

/// All points within a Mahalanobis radius of a centre.
///
/// # Formula
/// The points p with (p − c)ᵀ S⁻¹ (p − c) ≤ r²; c the centre, S the covariance, r the radius in
/// standard deviations. Its semi-axes are r times the square roots of the eigenvalues of S. What
/// share of shots, or how sure a mean, a radius stands for is a matter of statistics; here it is an
/// argument.
///
/// A covariance of rank one gives a segment, of rank zero a point; both are ellipses with an axis
/// of 0 mm.
///
/// # Source
/// R. A. Johnson and D. W. Wichern, *Applied Multivariate Statistical Analysis*, section 4.2
/// (number from memory).
///
/// # Example
/// ```
/// use nalgebra::Matrix2;
/// use quarterturn_geometry::{Ellipse, Point};
///
/// let covariance_mm2 = Matrix2::new(400.0, 0.0, 0.0, 900.0);
/// let ellipse = Ellipse::new(Point::new(12.0, 5.0), &covariance_mm2, 2.0)?;
/// assert_eq!(ellipse.semi_major().mm(), 60.0);
/// assert_eq!(ellipse.semi_minor().mm(), 40.0);
/// assert_eq!(ellipse.orientation().degrees(), 0.0); // higher than wide
/// assert!(ellipse.contains(Point::new(12.0, 64.0)));
/// assert!(!ellipse.contains(Point::new(71.0, 5.0)));
/// # Ok::<(), quarterturn_geometry::GeometryError>(())
/// ```
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ellipse {
    centre: Point,
    semi_major: Millimetres,
    semi_minor: Millimetres,
    orientation: Angle,
}

impl Ellipse {
    /// The ellipse around a finite `centre` of a covariance in mm², x then y, at a Mahalanobis
    /// `radius` in standard deviations.
    ///
    /// # Errors
    /// [`GeometryError::NotFinite`], [`GeometryError::Asymmetric`] and
    /// [`GeometryError::Indefinite`] for what is no covariance, rounding of one part in 10⁹
    /// forgiven; [`GeometryError::Radius`] for a radius that is negative or not finite.
    pub fn new(
        centre: Point,
        covariance_mm2: &Matrix2<f64>,
        radius: f64,
    ) -> Result<Self, GeometryError> {
        if !(radius.is_finite() && radius >= 0.0) {
            return Err(GeometryError::Radius { radius });
        }
        let axes = PrincipalAxes::of(covariance_mm2)?;
        let semi_axis = |variance_mm2: f64| Millimetres::new(radius * variance_mm2.sqrt());
        Ok(Self {
            centre,
            semi_major: semi_axis(axes.larger_mm2),
            semi_minor: semi_axis(axes.smaller_mm2),
            orientation: axes.direction,
        })
    }

    /// The middle of the ellipse.
    pub const fn centre(self) -> Point {
        self.centre
    }

    /// Half the longest way across, 0 mm or more.
    pub const fn semi_major(self) -> Millimetres {
        self.semi_major
    }

    /// Half the shortest way across, 0 mm or more.
    pub const fn semi_minor(self) -> Millimetres {
        self.semi_minor
    }

    /// The clock angle of the longest way across, in [0, π): 0 = 12 o'clock (higher than wide),
    /// clockwise as the archer sees it; 0 for a circle.
    pub const fn orientation(self) -> Angle {
        self.orientation
    }

    /// Whether `point` lies inside or on the ellipse, to within rounding.
    pub fn contains(self, point: Point) -> bool {
        let upright = (point - self.centre).rotated(self.orientation);
        let across = share(upright.x_mm, self.semi_minor);
        let along = share(upright.y_mm, self.semi_major);
        across.hypot(along) <= 1.0
    }

    /// `count` points of the boundary for drawing, from an end of the longest way across and
    /// clockwise.
    ///
    /// The points are evenly spaced in the angle t of (minor · sin t, major · cos t), closest where
    /// the boundary bends most.
    pub fn boundary(self, count: usize) -> impl Iterator<Item = Point> {
        (0..count).map(move |k| {
            let (sin, cos) = (TAU * k as f64 / count as f64).sin_cos();
            let upright = Offset::new(self.semi_minor.mm() * sin, self.semi_major.mm() * cos);
            self.centre + upright.rotated(-self.orientation)
        })
    }
}

/// A distance as a share of a semi-axis; none at all is inside an axis of any length, also of none.
fn share(distance_mm: f64, semi_axis: Millimetres) -> f64 {
    if distance_mm == 0.0 { 0.0 } else { distance_mm / semi_axis.mm() }
}
