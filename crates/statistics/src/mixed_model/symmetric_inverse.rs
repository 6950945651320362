//! Inverse and determinant of a positive definite matrix by halves.

use nalgebra::{DMatrix, DMatrixView};

/// A⁻¹ with ln det A.
pub struct SymmetricInverse {
    pub matrix: DMatrix<f64>,
    pub log_det: f64,
}

/// Up to here column by column is quicker than products of parts.
const WHOLE: usize = 24;

impl SymmetricInverse {
    /// Inverts the symmetric `a`; `None` unless it is positive definite.
    ///
    /// # Formula
    /// With A = (B ·; C D), T = C B⁻¹ and the Schur complement E = D − T Cᵀ: ln det A = ln det B + ln det E and
    /// A⁻¹ = (B⁻¹ + Tᵀ E⁻¹ T, ·; −E⁻¹ T, E⁻¹). Nearly all work is products of large matrices, which run several times faster
    /// than elimination column by column.
    pub fn of(a: DMatrixView<f64>) -> Option<Self> {
        let n = a.nrows();
        if n <= WHOLE {
            return Self::column_by_column(a.clone_owned());
        }
        let (half, rest) = (n / 2, n - n / 2);
        let beside = a.view((half, 0), (rest, half));
        let first = Self::of(a.view((0, 0), (half, half)))?;
        let across = beside * &first.matrix;
        let schur = a.view((half, half), (rest, rest)) - &across * beside.transpose();
        let second = Self::of(schur.as_view())?;
        let below = -&second.matrix * &across;
        let corner = first.matrix - across.transpose() * &below;
        let mut matrix = DMatrix::zeros(n, n);
        matrix.view_mut((0, 0), (half, half)).copy_from(&corner);
        matrix.view_mut((half, 0), (rest, half)).copy_from(&below);
        matrix.view_mut((0, half), (half, rest)).tr_copy_from(&below);
        matrix.view_mut((half, half), (rest, rest)).copy_from(&second.matrix);
        Some(Self { matrix, log_det: first.log_det + second.log_det })
    }

    /// Gauss and Jordan's elimination in place; the pivots' product is the determinant.
    fn column_by_column(mut matrix: DMatrix<f64>) -> Option<Self> {
        let mut log_det = 0.0;
        for k in 0..matrix.nrows() {
            let pivot = matrix[(k, k)];
            log_det += (pivot > 0.0).then(|| pivot.ln())?;
            let column = matrix.column(k) / pivot;
            let row = matrix.row(k).transpose();
            matrix.ger(-1.0, &column, &row, 1.0);
            matrix.set_row(k, &(row / pivot).transpose());
            matrix.set_column(k, &-column);
            matrix[(k, k)] = pivot.recip();
        }
        Some(Self { matrix, log_det })
    }
}
