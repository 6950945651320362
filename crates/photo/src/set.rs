//! Four marks that may be those of one face.

use nalgebra::Matrix2;
use quarterturn_geometry::{Homography, Mark, MarkError, Millimetres, Pixel, Point};

use crate::candidate::Candidate;
use crate::{Corner, Dot};

/// How much the sizes of the four white discs, each along its two axes, may differ from their mean once they are laid on
/// the face; as a share.
const UNLIKE: f64 = 0.12;

/// Four candidates, one for each corner.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Set<'a>(pub [&'a Candidate; 4]);

/// What is found of a set.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Judged {
    /// It is no picture of a face.
    No,
    /// It is one, seen in a mirror.
    Mirrored,
    /// It is one.
    Fits {
        /// The view.
        view: Box<Homography>,
        /// How large its white discs are on the face, in their printed size.
        size: f64,
        /// By how much the least alike of their axes differs from their mean, as a share.
        unlike: f64,
    },
}

impl Set<'_> {
    /// Whether the marks lie on the face as they are printed, which they do in the true set only.
    ///
    /// # Formula
    /// A disc of radius r spreads by r²/4 along each axis. With D the slope of the point in the pixel at a mark, the spread
    /// S of its white disc in the picture is D S Dᵀ on the face, whose eigenvalues give the radius along both axes.
    pub fn judged(&self, spacing: Millimetres) -> Judged {
        match Homography::of_marks(&self.marks(spacing)) {
            Ok(view) => self.sizes(&view).map_or(Judged::No, |(size, unlike)| Judged::Fits {
                view: Box::new(view),
                size,
                unlike,
            }),
            Err(MarkError::Mirrored) => {
                let turned_over = self.marks(spacing).map(|Mark { pixel, point }| {
                    let point = Point::new(-point.x_mm, point.y_mm);
                    Mark { pixel, point }
                });
                let view = Homography::of_marks(&turned_over);
                let fits = view.is_ok_and(|view| self.sizes(&view).is_some());
                if fits { Judged::Mirrored } else { Judged::No }
            }
            Err(_) => Judged::No,
        }
    }

    fn marks(&self, spacing: Millimetres) -> [Mark; 4] {
        std::array::from_fn(|at| Mark {
            pixel: self.pixels()[at],
            point: Corner::ALL[at].point(spacing),
        })
    }

    /// Where its marks are.
    pub fn pixels(&self) -> [Pixel; 4] {
        self.0.map(|one| Pixel::new(one.middle.x, one.middle.y))
    }

    /// The mean size and the largest difference from it, where that is small.
    fn sizes(&self, view: &Homography) -> Option<(f64, f64)> {
        let mut sizes = Vec::with_capacity(8);
        for one in self.0 {
            let slope = slope(view, Pixel::new(one.middle.x, one.middle.y))?;
            let on_face = slope * one.spread * slope.transpose();
            let spreads = on_face.symmetric_eigenvalues();
            sizes.extend(
                spreads.iter().map(|spread| 2.0 * spread.max(0.0).sqrt() / Dot::WHITE.mm()),
            );
        }
        let mean = sizes.iter().sum::<f64>() / sizes.len() as f64;
        let unlike = sizes.iter().map(|size| (size / mean - 1.0).abs()).fold(0.0, f64::max);
        (unlike <= UNLIKE).then_some((mean, unlike))
    }
}

/// How the point moves with the pixel, mm a px.
pub(crate) fn slope(view: &Homography, at: Pixel) -> Option<Matrix2<f64>> {
    let point = |x_px: f64, y_px: f64| view.point_at(Pixel::new(at.x_px + x_px, at.y_px + y_px));
    let half = 0.5;
    let across = point(half, 0.0)? - point(-half, 0.0)?;
    let down = point(0.0, half)? - point(0.0, -half)?;
    Some(Matrix2::new(across.x_mm, down.x_mm, across.y_mm, down.y_mm))
}
