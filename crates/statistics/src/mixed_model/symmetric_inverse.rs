//! Inverse and determinant of a positive definite matrix by halves.

use nalgebra::{DMatrix, DMatrixView};

/// A⁻¹ with ln det A.
pub struct SymmetricInverse {
    pub matrix: DMatrix<f64>,
    pub log_det: f64,
}

/// Below this the plain Cholesky root is quicker than products of parts.
const WHOLE: usize = 24;

impl SymmetricInverse {
    /// Inverts `a`, of which only the lower half is read; `None` unless it is positive definite.
    ///
    /// # Formula
    /// With A = (B ·; C D), T = C B⁻¹ and the Schur complement E = D − T Cᵀ: ln det A = ln det B + ln det E and
    /// A⁻¹ = (B⁻¹ + Tᵀ E⁻¹ T, ·; −E⁻¹ T, E⁻¹). Nearly all work is products of large matrices, which run several times faster
    /// than a column-by-column root.
    pub fn of(a: DMatrixView<f64>) -> Option<Self> {
        let n = a.nrows();
        if n <= WHOLE {
            let root = a.clone_owned().cholesky()?;
            let log_det = 2.0 * root.l_dirty().diagonal().iter().map(|x| x.ln()).sum::<f64>();
            return Some(Self { matrix: root.inverse(), log_det });
        }
        let (half, rest) = (n / 2, n - n / 2);
        let beside = a.view((half, 0), (rest, half));
        let first = Self::of(a.view((0, 0), (half, half)))?;
        let across = beside * &first.matrix;
        let schur = a.view((half, half), (rest, rest)) - &across * beside.transpose();
        let second = Self::of(schur.as_view())?;
        let below = &second.matrix * &across;
        let mut matrix = DMatrix::zeros(n, n);
        let corner = first.matrix + across.transpose() * &below;
        matrix.view_mut((0, 0), (half, half)).copy_from(&corner);
        matrix.view_mut((half, 0), (rest, half)).copy_from(&-&below);
        matrix.view_mut((0, half), (half, rest)).copy_from(&-below.transpose());
        matrix.view_mut((half, half), (rest, rest)).copy_from(&second.matrix);
        Some(Self { matrix, log_det: first.log_det + second.log_det })
    }
}
