//! From a picture of the face to places on it, by marks whose places are known.

mod arrangement;
mod frame;
mod mark;
mod mark_error;
mod refinement;
mod view;

#[cfg(test)]
mod tests;

use nalgebra::{Matrix2, Matrix3, Vector2};

use frame::Frame;
pub use mark::{Mark, Pixel};
pub use mark_error::MarkError;
use refinement::refined;
use view::{Parameters, View};

use crate::{Offset, Point};

/// The plane of a face as a picture shows it, seen slantwise from anywhere before it.
///
/// # Formula
/// x = (h₁₁u + h₁₂v + h₁₃)/w, y = (h₂₁u + h₂₂v + h₂₃)/w, w = h₃₁u + h₃₂v + 1, for a pixel (u, v) and a point (x, y).
/// Both sides are first moved and stretched to the origin and a mean distance of √2; the linear equations that follow
/// from multiplying by w are solved by least squares (the direct linear transform), and from there the squared
/// distances on the face, in mm, are made least by damped Gauss-Newton steps.
///
/// # Assumptions
/// The face is flat and the lens draws straight lines straight. The marks' places on the face are exact; what is
/// uncertain is how they are read in the picture, alike in both directions and for every mark.
///
/// # Source
/// R. Hartley, A. Zisserman, 2004, Multiple View Geometry in Computer Vision, second edition, algorithms 4.2 and 4.3,
/// covariances section 5.2 (from memory).
///
/// # Example
/// ```
/// use quarterturn_geometry::{Homography, Mark, Pixel, Point};
///
/// let corners = [(412.0, 388.0), (2650.0, 301.0), (2781.0, 2412.0), (355.0, 2290.0)];
/// let places = [(-300.0, 300.0), (300.0, 300.0), (300.0, -300.0), (-300.0, -300.0)];
/// let marks: Vec<_> = corners.iter().zip(places)
///     .map(|(&(u, v), (x, y))| Mark { pixel: Pixel::new(u, v), point: Point::new(x, y) })
///     .collect();
/// let picture = Homography::of_marks(&marks)?;
///
/// let hole = Pixel::new(1500.0, 1300.0);
/// let hit = picture.point_at(hole).expect("before the horizon");
/// assert_eq!(format!("{:.2}, {:.2}", hit.x_mm, hit.y_mm), "3.01, 2.32");
/// // How well it is known when each pixel was read to within 3.
/// let covariance_mm2 = picture.covariance_mm2(hole, 3.0).expect("before the horizon");
/// assert_eq!(format!("{:.1} mm", covariance_mm2[(0, 0)].sqrt()), "1.0 mm");
/// # Ok::<(), quarterturn_geometry::MarkError>(())
/// ```
#[derive(Clone, Debug, PartialEq)]
pub struct Homography {
    view: View,
    picture: Frame,
    face: Frame,
    errors: Vec<Offset>,
    /// Covariance of the parameters for pixels read with a variance of 1 px².
    spread: Parameters,
    /// Sum of squares of what the marks miss, over what it is on average for the same reading; px². None for four marks.
    reading_px2: Option<f64>,
    /// From the face to the picture, where that can be told.
    backward: Option<Matrix3<f64>>,
}

impl Homography {
    /// The picture in which `marks`, four or more, are read.
    ///
    /// # Errors
    /// [`MarkError`] for fewer than four or more than a hundred marks, a coordinate that is not finite or beyond 10⁹,
    /// two marks in one place, all but one on a line, marks taken for each other, a mirrored picture, or marks that
    /// agree on no view.
    pub fn of_marks(marks: &[Mark]) -> Result<Self, MarkError> {
        arrangement::check(marks)?;
        let picture = Frame::of(marks.iter().map(|mark| mark.pixel.vector()));
        let face = Frame::of(marks.iter().map(|mark| mark.point.vector()));
        let pairs: Vec<_> = marks
            .iter()
            .map(|mark| (picture.inside(mark.pixel.vector()), face.inside(mark.point.vector())))
            .collect();
        let linear = View::linear(&pairs).ok_or(MarkError::NoView)?;
        let (view, inverse) = refined(linear, &pairs).ok_or(MarkError::NoView)?;
        let mut spread = Parameters::zeros();
        let (mut squares, mut left) = (0.0, 0.0);
        let mut errors = Vec::with_capacity(marks.len());
        for (pixel, point) in &pairs {
            let slope = view.slope(*pixel) * picture.scale;
            let lever = slope.transpose() * view.parameter_slope(*pixel);
            spread += lever.transpose() * lever;
            left += slope.norm_squared();
            let error = view.at(*pixel) - point;
            squares += error.norm_squared();
            errors.push(Offset::new(error.x, error.y) * face.scale.recip());
        }
        left -= (inverse * spread).trace();
        let reading_px2 = (marks.len() > 4).then_some(squares / left);
        let spread = inverse * spread * inverse;
        let backward = matrix(&view, &picture, &face).try_inverse();
        Ok(Self { view, picture, face, errors, spread, reading_px2, backward })
    }

    /// The point that a pixel shows; `None` at the horizon of the face's plane and beyond, and for what is no pixel.
    pub fn point_at(&self, pixel: Pixel) -> Option<Point> {
        let inside = self.before_horizon(pixel)?;
        let point = self.face.outside(self.view.at(inside));
        Some(Point::new(point.x, point.y))
    }

    /// The pixel that shows a point; `None` for a point that no camera before the face can see.
    pub fn pixel_of(&self, point: Point) -> Option<Pixel> {
        let seen = self.backward? * point.vector().push(1.0);
        let pixel = Pixel::new(seen.x / seen.z, seen.y / seen.z);
        self.before_horizon(pixel).map(|_| pixel)
    }

    /// The reprojection errors: from where each mark is to where its pixel is taken to be, in the order of the marks.
    /// Four marks have none beyond rounding.
    pub fn errors(&self) -> &[Offset] {
        &self.errors
    }

    /// How far, in px per axis, a mark is read off its place: the standard deviation that the reprojection errors tell
    /// of, with 2n − 8 degrees of freedom. `None` for four marks, which always fit.
    ///
    /// # Formula
    /// σ² = Σ|eᵢ|²/(Σ|Dᵢ|² − tr(K B)), B = Σ Jᵢᵀ Dᵢ Dᵢᵀ Jᵢ, K = (Σ Jᵢᵀ Jᵢ)⁻¹, with Dᵢ the slope of the point in the
    /// pixel at mark i and Jᵢ that in the parameters.
    pub fn reading_error_px(&self) -> Option<f64> {
        self.reading_px2.map(f64::sqrt)
    }

    /// The covariance, mm², of the point that a pixel shows, where it and every mark were read with the standard
    /// deviation `reading_error_px` per axis; `None` as for [`point_at`](Self::point_at), and for an error that is
    /// negative or not finite.
    ///
    /// # Formula
    /// σ² (D Dᵀ + J K B K Jᵀ), to first order in σ; letters as in [`reading_error_px`](Self::reading_error_px).
    pub fn covariance_mm2(&self, pixel: Pixel, reading_error_px: f64) -> Option<Matrix2<f64>> {
        if !(reading_error_px.is_finite() && reading_error_px >= 0.0) {
            return None;
        }
        let inside = self.before_horizon(pixel)?;
        let slope = self.view.slope(inside) * self.picture.scale;
        let lever = self.view.parameter_slope(inside);
        let unit = slope * slope.transpose() + lever * self.spread * lever.transpose();
        Some(unit * (reading_error_px / self.face.scale).powi(2))
    }

    /// The nine numbers that take (u, v, 1) in px to (x w, y w, w) in mm; w is how far a pixel is before the horizon, 1 at
    /// the middle of the marks.
    pub fn matrix(&self) -> Matrix3<f64> {
        matrix(&self.view, &self.picture, &self.face)
    }

    fn before_horizon(&self, pixel: Pixel) -> Option<Vector2<f64>> {
        if pixel.vector().amax() > arrangement::LARGEST {
            return None;
        }
        let inside = self.picture.inside(pixel.vector());
        (self.view.depth(inside) > view::HORIZON).then_some(inside)
    }
}

fn matrix(view: &View, picture: &Frame, face: &Frame) -> Matrix3<f64> {
    face.outward() * view.matrix() * picture.inward()
}
