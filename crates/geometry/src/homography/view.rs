//! The eight numbers of a view, inside both frames.

use nalgebra::{DMatrix, DVector, Matrix2, Matrix3, SMatrix, SVector, Vector2};

/// A matrix over the eight numbers.
pub(super) type Parameters = SMatrix<f64, 8, 8>;

/// A pixel and the point it shows.
pub(super) type Pair = (Vector2<f64>, Vector2<f64>);

/// Of the depth at the middle of the marks: nearer to the horizon than this, places are as good as infinitely far.
pub(super) const HORIZON: f64 = 1e-6;

/// h₁₁, h₁₂, h₁₃, h₂₁, h₂₂, h₂₃, h₃₁, h₃₂; h₃₃ is 1, as the middle of the marks never lies on the horizon.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct View(pub(super) SVector<f64, 8>);

impl View {
    /// The view that makes the linear equations' squares least; `None` where they have no one solution.
    pub(super) fn linear(pairs: &[Pair]) -> Option<Self> {
        let rows = pairs.iter().flat_map(|(p, q)| {
            let (first, second) = ([p.x, p.y, 1.0], [0.0; 3]);
            let row = |a: [f64; 3], b: [f64; 3], of: f64| {
                a.into_iter().chain(b).chain([-of * p.x, -of * p.y])
            };
            row(first, second, q.x).chain(row(second, first, q.y))
        });
        let matrix = DMatrix::from_row_iterator(2 * pairs.len(), 8, rows);
        let right = pairs.iter().flat_map(|(_, q)| [q.x, q.y]);
        let right = DVector::from_iterator(2 * pairs.len(), right);
        let qr = matrix.qr();
        let solution = qr.r().solve_upper_triangular(&qr.q().tr_mul(&right))?;
        let view = Self(SVector::from_column_slice(solution.as_slice()));
        view.is_before(pairs).then_some(view)
    }

    /// Whether all pixels lie before the horizon; not for what is no number.
    pub(super) fn is_before(&self, pairs: &[Pair]) -> bool {
        self.0.iter().all(|h| h.is_finite()) && pairs.iter().all(|(p, _)| self.depth(*p) > HORIZON)
    }

    /// w: how far from the horizon, 1 at the middle of the marks.
    pub(super) fn depth(&self, pixel: Vector2<f64>) -> f64 {
        self.0[6] * pixel.x + self.0[7] * pixel.y + 1.0
    }

    pub(super) fn at(&self, pixel: Vector2<f64>) -> Vector2<f64> {
        let h = &self.0;
        let x = h[0] * pixel.x + h[1] * pixel.y + h[2];
        let y = h[3] * pixel.x + h[4] * pixel.y + h[5];
        Vector2::new(x, y) / self.depth(pixel)
    }

    /// How the point moves with its pixel.
    pub(super) fn slope(&self, pixel: Vector2<f64>) -> Matrix2<f64> {
        let (h, at) = (&self.0, self.at(pixel));
        let linear = Matrix2::new(h[0], h[1], h[3], h[4]);
        (linear - at * Vector2::new(h[6], h[7]).transpose()) / self.depth(pixel)
    }

    /// How the point moves with the eight numbers.
    pub(super) fn parameter_slope(&self, pixel: Vector2<f64>) -> SMatrix<f64, 2, 8> {
        let (at, depth) = (self.at(pixel), self.depth(pixel));
        let [u, v, one] = [pixel.x, pixel.y, 1.0].map(|part| part / depth);
        SMatrix::<f64, 8, 2>::from_columns(&[
            SVector::from([u, v, one, 0.0, 0.0, 0.0, -at.x * u, -at.x * v]),
            SVector::from([0.0, 0.0, 0.0, u, v, one, -at.y * u, -at.y * v]),
        ])
        .transpose()
    }

    pub(super) fn matrix(&self) -> Matrix3<f64> {
        let h = &self.0;
        Matrix3::new(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1.0)
    }
}
