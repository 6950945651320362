//! A pinhole with a lens, somewhere before the face.

use nalgebra::{Matrix2, Matrix2x3, Matrix3, Rotation3, SMatrix, SVector, Vector2, Vector3};

use super::{Lens, TailError};
use crate::{Homography, Millimetres, ShaftDirection};

/// Three of the turn, three of the shift, the logarithm of the focal length, two of the middle, the bend.
pub(super) const NUMBERS: usize = 10;
/// A change of all numbers.
pub(super) type Step = SVector<f64, NUMBERS>;

/// Steps in which a bent place is straightened; each leaves a fiftieth or less.
const STRAIGHTENING: usize = 8;
/// Two tails that fit must be so far apart, or else the ray runs along the sphere and neither is known.
const APART_DEG: f64 = 20.0;
/// No arrow stands so far over in a face that it was shot at.
const MOST_LEAN_DEG: f64 = 35.0;

/// Where a camera stands and how it sees.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Pinhole {
    /// From the face (right, up, toward the archer) to the camera (right, down, ahead).
    pub turn: Rotation3<f64>,
    /// Where the spot is from the camera, mm.
    pub shift: Vector3<f64>,
    pub focal_px: f64,
    pub middle: Vector2<f64>,
    /// By how much of `corner_px` a place at the corner is moved outward.
    pub bend: f64,
    pub corner_px: f64,
}

impl Pinhole {
    /// The pinhole with this lens that sees the face nearly as `view` does; `None` where none does.
    pub fn nearly(view: &Homography, lens: &Lens) -> Option<Self> {
        let middle = lens.middle.vector();
        let f = lens.focal_px;
        let calibration = Matrix3::new(f, 0.0, middle.x, 0.0, f, middle.y, 0.0, 0.0, 1.0);
        let seen = calibration.try_inverse()? * view.matrix().try_inverse()?;
        let [right, up, shift] = [0, 1, 2].map(|column| seen.column(column).into_owned());
        let scale = 2.0 / (right.norm() + up.norm()) * shift.z.signum();
        let [right, up] = [right, up].map(|axis| axis * scale);
        let axes = Matrix3::from_columns(&[right, up, right.cross(&up)]);
        let turn = Rotation3::from_matrix_eps(&axes, 1e-12, 100, Rotation3::identity());
        let is_finite = turn.matrix().iter().chain(&shift).all(|number| number.is_finite());
        is_finite.then_some(Self {
            turn,
            shift: shift * scale,
            focal_px: f,
            middle,
            bend: 0.0,
            corner_px: lens.corner_px,
        })
    }

    /// The pinhole that would see a face without perspective alike: the face tilted the other way.
    ///
    /// # Source
    /// Two poses fit a small or far plane: G. Schweighofer, A. Pinz, 2006, IEEE Transactions on Pattern Analysis and Machine
    /// Intelligence 28, 2024 (from memory).
    pub fn tilted_the_other_way(&self) -> Self {
        let ahead = self.shift.normalize();
        let mirror = Matrix3::identity() - ahead * ahead.transpose() * 2.0;
        let turn =
            mirror * self.turn.matrix() * Matrix3::from_diagonal(&Vector3::new(1.0, 1.0, -1.0));
        Self { turn: Rotation3::from_matrix_unchecked(turn), ..*self }
    }

    /// The same after a small change.
    pub fn moved(&self, by: &Step) -> Self {
        let part = |at: usize| Vector3::new(by[at], by[at + 1], by[at + 2]);
        Self {
            turn: Rotation3::new(part(0)) * self.turn,
            shift: self.shift + part(3),
            focal_px: self.focal_px * by[6].exp(),
            middle: self.middle + Vector2::new(by[7], by[8]),
            bend: self.bend + by[9],
            corner_px: self.corner_px,
        }
    }

    /// Where the picture shows a place, and how that moves with the numbers; `None` for what is not before the camera.
    pub fn seen(&self, place: Vector3<f64>) -> Option<(Vector2<f64>, SMatrix<f64, 2, NUMBERS>)> {
        let turned = self.turn * place;
        let from = turned + self.shift;
        if from.z <= 0.0 {
            return None;
        }
        let per_z = self.focal_px / from.z;
        let flat = from.xy() * per_z;
        let out = flat.norm_squared() / (self.corner_px * self.corner_px);
        let stretch = 1.0 + self.bend * out;
        let bent = Matrix2::identity() * stretch
            + flat * flat.transpose() * (2.0 * self.bend / (self.corner_px * self.corner_px));
        let lever = Matrix2x3::new(1.0, 0.0, -from.x / from.z, 0.0, 1.0, -from.y / from.z) * per_z;
        let by_shift = bent * lever;
        let by_turn = by_shift * -turned.cross_matrix();
        let mut slope = SMatrix::<f64, 2, NUMBERS>::zeros();
        slope.fixed_columns_mut::<3>(0).copy_from(&by_turn);
        slope.fixed_columns_mut::<3>(3).copy_from(&by_shift);
        slope.set_column(6, &(bent * flat));
        slope.fixed_columns_mut::<2>(7).copy_from(&Matrix2::identity());
        slope.set_column(9, &(flat * out));
        Some((self.middle + flat * stretch, slope))
    }

    /// Where the pinhole is, mm from the spot: right, up, toward the archer.
    pub fn place(&self) -> Vector3<f64> {
        -(self.turn.inverse() * self.shift)
    }

    /// Which way a pixel looks, on the face's axes.
    fn toward(&self, pixel: Vector2<f64>) -> Vector3<f64> {
        let bent = (pixel - self.middle) / self.corner_px;
        let straight = |flat: Vector2<f64>, _| bent / (1.0 + self.bend * flat.norm_squared());
        let flat = (0..STRAIGHTENING).fold(bent, straight) * self.corner_px;
        (self.turn.inverse() * flat.push(self.focal_px)).normalize()
    }

    /// The place on the face that a pixel shows.
    pub fn on_face(&self, pixel: Vector2<f64>) -> Vector3<f64> {
        let (place, toward) = (self.place(), self.toward(pixel));
        place - toward * (place.z / toward.z)
    }

    /// Where the shaft points from the place `hole` on the face whose tail a pixel shows, `length` away.
    pub fn shaft(
        &self,
        hole: Vector3<f64>,
        tail: Vector2<f64>,
        length: Millimetres,
    ) -> Result<ShaftDirection, TailError> {
        let (from, toward) = (self.place() - hole, self.toward(tail));
        let along = -from.dot(&toward);
        let beside = (from + toward * along).norm();
        let half = (length.mm() * length.mm() - beside * beside).sqrt();
        if half.is_nan() {
            return Err(TailError::TooShort { length, least: Millimetres::new(beside) });
        }
        let tails = [along + half, along - half].map(|far| (far, from + toward * far));
        let of = |(far, tail): (f64, Vector3<f64>)| {
            let shaft = ShaftDirection::of_tail(tail)?;
            let lean = shaft.angle_to(ShaftDirection::straight());
            (far > 0.0 && lean.degrees() <= MOST_LEAN_DEG).then_some((lean, shaft))
        };
        match tails.map(of) {
            [Some(one), Some(other)] if one.1.angle_to(other.1).degrees() < APART_DEG => {
                Err(TailError::FromTheSide)
            }
            [Some(one), Some(other)] => Ok(if one.0 <= other.0 { one.1 } else { other.1 }),
            [Some(one), None] | [None, Some(one)] => Ok(one.1),
            [None, None] => Err(TailError::Nowhere { length }),
        }
    }
}
