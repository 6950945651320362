//! From the marks of a face to the camera before it, and from the pixels of a shaft's two ends to its lean.

mod fit;
mod lens;
mod pinhole;
mod seen_lean;
mod seen_shaft;
mod slip;
mod tail_error;

#[cfg(test)]
mod tests;

use nalgebra::{Matrix2, Vector2};

use fit::{Evidence, Fit};
pub use lens::Lens;
use pinhole::{NUMBERS, Pinhole};
pub use seen_lean::SeenLean;
use seen_lean::Shared;
pub use seen_shaft::SeenShaft;
use slip::Slip;
pub use tail_error::TailError;

use crate::{Homography, Lean, Mark, Millimetres};

/// The numbers of the camera, and whether the face is tilted the other way.
const SOURCES: usize = NUMBERS + 1;

/// The camera that took a picture of a face.
///
/// # Formula
/// A place X is seen at c + m (1 + k |m|²/R²), m = f (p₁, p₂)/p₃, p = Q X + t: Q turns and t shifts, f is the focal length, c the
/// middle, k the bend at the corner, R from the middle. These ten numbers make least
///
/// ```text
/// Σ |off|²/σ² + (ln f/f₀)²/s² + |c − c₀|²/r² + k²/q²
/// ```
///
/// with σ the reading of a mark and s, r, q how well the [`Lens`] is known: where the marks tell the focal length, they do;
/// where the face is seen from straight ahead they cannot, and it stays as well known as it was. The covariance is the
/// inverse of the normal equations. The search begins at both poses that fit a plane without perspective; the worse counts
/// by its likelihood.
///
/// # Source
/// The two constraints that a plane lays on a camera: Z. Zhang, 2000, A flexible new technique for camera calibration, IEEE
/// Transactions on Pattern Analysis and Machine Intelligence 22, 1330; R. Hartley, A. Zisserman, 2004, Multiple View Geometry in
/// Computer Vision, second edition, chapter 8 (both from memory). Put into one likelihood with the priors: ours.
#[derive(Clone, Debug, PartialEq)]
pub struct Camera {
    best: Fit,
    /// The face tilted the other way, with how likely that is.
    other: Option<(Pinhole, f64)>,
    lens: Lens,
    freedom: f64,
}

impl Camera {
    /// The camera that sees `marks`, whose view is `view`, each read to `read_sd_px`, through `lens`; `None` where no camera
    /// does.
    pub fn of_marks(
        marks: &[Mark],
        view: &Homography,
        lens: &Lens,
        read_sd_px: f64,
    ) -> Option<Self> {
        let evidence = Evidence { marks, lens, read_sd_px };
        let start = Pinhole::nearly(view, lens)?;
        let fits = [start, start.tilted_the_other_way()].map(|start| evidence.fit(start));
        let is_before = |fit: &Fit| fit.pinhole.place().z > 0.0;
        let mut fits: Vec<Fit> = fits.into_iter().flatten().filter(is_before).collect();
        fits.sort_by(|one, other| one.squares.total_cmp(&other.squares));
        let mut fits = fits.into_iter();
        let best = fits.next()?;
        let other = fits.next().map(|other| {
            let odds = ((best.squares - other.squares) / 2.0).exp();
            (other.pinhole, odds / (1.0 + odds))
        });
        let freedom = (2 * marks.len() + 4 - NUMBERS) as f64;
        Some(Self { best, other, lens: *lens, freedom })
    }

    /// Where it is from the spot, mm: right, up, toward the archer.
    pub fn place_mm(&self) -> [f64; 3] {
        self.best.pinhole.place().into()
    }

    /// Its focal length in the terms of 35 mm film.
    pub fn focal(&self) -> Millimetres {
        self.lens.on_film(self.best.pinhole.focal_px)
    }

    /// How well that is known: the standard deviation of its natural logarithm.
    pub fn focal_spread(&self) -> f64 {
        self.best.root.row(6).norm()
    }

    /// How badly the marks and the lens go together, in standard deviations: above about 4 the picture was cut, its lens bends,
    /// or it is another.
    ///
    /// # Formula
    /// Z of a chi-squared sum with ν = 2n − 6 degrees of freedom, ((χ²/ν)^⅓ − 1 + 2/(9ν)) / √(2/(9ν)): E. B. Wilson, M. M. Hilferty,
    /// 1931, Proceedings of the National Academy of Sciences 17, 684 (from memory).
    pub fn misfit(&self) -> f64 {
        let part = 2.0 / (9.0 * self.freedom);
        ((self.best.squares / self.freedom).cbrt() - 1.0 + part) / part.sqrt()
    }

    /// The lean of a shaft, by the pixels of both its ends: its tail is where the ray of its pixel meets the sphere about its
    /// hole.
    ///
    /// Each source of error is moved by a standard deviation either way, and half of the difference taken; so what is
    /// returned knows of the reading, the shaft, the camera, its lens and, where the marks hardly tell it, which way the face is tilted.
    ///
    /// # Errors
    /// [`TailError`]: no such arrow, or one seen from the side.
    pub fn lean(&self, shaft: &SeenShaft) -> Result<SeenLean, TailError> {
        let best = &self.best.pinhole;
        let lean = lean(best, shaft, Slip::NONE)?;
        let change = |both: [Result<Lean, TailError>; 2]| change(lean, both);
        let mut own = Matrix2::zeros();
        for slip in Slip::of(shaft) {
            let change = change([slip, slip.back()].map(|slip| self::lean(best, shaft, slip)))?;
            own += change * change.transpose();
        }
        let mut shared = Shared::zeros();
        for (at, step) in self.best.root.column_iter().enumerate() {
            let moved = [step.into_owned(), -step].map(|step| best.moved(&step));
            let change = change(moved.map(|camera| self::lean(&camera, shaft, Slip::NONE)))?;
            shared.set_column(at, &change);
        }
        if let Some((other, chance)) = &self.other {
            // A tail that cannot be says that the other cannot be either.
            let change =
                self::lean(other, shaft, Slip::NONE).map(|other| angles(other) - angles(lean));
            shared.set_column(NUMBERS, &(change.unwrap_or_default() * chance.sqrt()));
        }
        Ok(SeenLean { lean, own, shared })
    }
}

fn lean(pinhole: &Pinhole, shaft: &SeenShaft, slip: Slip) -> Result<Lean, TailError> {
    let hole = pinhole.on_face(shaft.hole.vector() + slip.hole_px) + slip.hole_mm.push(0.0);
    let tail = shaft.tail.vector() + slip.tail_px;
    let length = Millimetres::new(shaft.length.mm() + slip.length_mm);
    pinhole.shaft(hole, tail, length).map(Lean::from)
}

/// What a standard deviation does to a lean that comes out so with it added and taken away; where one of them cannot be, the
/// other tells.
fn change(lean: Lean, both: [Result<Lean, TailError>; 2]) -> Result<Vector2<f64>, TailError> {
    match both {
        [Ok(more), Ok(less)] => Ok((angles(more) - angles(less)) / 2.0),
        [Ok(one), Err(_)] | [Err(_), Ok(one)] => Ok(angles(one) - angles(lean)),
        [Err(_), Err(_)] => Err(TailError::FromTheSide),
    }
}

fn angles(lean: Lean) -> Vector2<f64> {
    Vector2::new(lean.x.radians(), lean.y.radians())
}
