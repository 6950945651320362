//! The inverse of a positive definite matrix, by halves, so that nearly all of its work is matrix products.

use nalgebra::DMatrix;

/// Below this size the plain algorithm is faster.
const SMALL: usize = 32;

/// The inverse of a precision matrix, and its determinant.
pub struct PrecisionInverse {
    /// The covariance.
    pub inverse: DMatrix<f64>,
    /// ln det of the precision.
    pub log_det: f64,
}

impl PrecisionInverse {
    /// Inverts a precision, L⁻ᵀ L⁻¹ with L its Cholesky root.
    ///
    /// The prior alone makes a precision positive definite; where rounding undoes that, only its diagonal is taken.
    pub fn of(precision: DMatrix<f64>) -> Self {
        let diagonal = precision.diagonal();
        let by_root = precision.cholesky().and_then(|root| {
            let log_det = root.ln_determinant();
            Some(Self { inverse: gram(&triangular_inverse(&root.unpack())?), log_det })
        });
        by_root.unwrap_or_else(|| Self {
            inverse: DMatrix::from_diagonal(&diagonal.map(f64::recip)),
            log_det: diagonal.iter().map(|one| one.ln()).sum(),
        })
    }
}

/// The inverse of a lower triangular matrix.
///
/// # Formula
/// ```text
/// ⎡ A 0 ⎤⁻¹   ⎡     A⁻¹       0  ⎤
/// ⎣ B C ⎦   = ⎣ −C⁻¹ B A⁻¹   C⁻¹ ⎦
/// ```
fn triangular_inverse(root: &DMatrix<f64>) -> Option<DMatrix<f64>> {
    let n = root.nrows();
    if n <= SMALL {
        return root.solve_lower_triangular(&DMatrix::identity(n, n));
    }
    let half = n / 2;
    let rest = n - half;
    let first = triangular_inverse(&root.view((0, 0), (half, half)).into_owned())?;
    let second = triangular_inverse(&root.view((half, half), (rest, rest)).into_owned())?;
    let below = -(&second * root.view((half, 0), (rest, half)) * &first);
    let mut inverse = DMatrix::zeros(n, n);
    inverse.view_mut((0, 0), (half, half)).copy_from(&first);
    inverse.view_mut((half, 0), (rest, half)).copy_from(&below);
    inverse.view_mut((half, half), (rest, rest)).copy_from(&second);
    Some(inverse)
}

/// Lᵀ L of a lower triangular L.
fn gram(root: &DMatrix<f64>) -> DMatrix<f64> {
    let n = root.nrows();
    if n <= SMALL {
        return root.transpose() * root;
    }
    let half = n / 2;
    let rest = n - half;
    let below = root.view((half, 0), (rest, half)).into_owned();
    let second = root.view((half, half), (rest, rest)).into_owned();
    let first = root.view((0, 0), (half, half)).into_owned();
    let corner = gram(&first) + below.transpose() * &below;
    let across = second.transpose() * &below;
    let mut product = DMatrix::zeros(n, n);
    product.view_mut((0, 0), (half, half)).copy_from(&corner);
    product.view_mut((half, 0), (rest, half)).copy_from(&across);
    product.view_mut((0, half), (half, rest)).copy_from(&across.transpose());
    product.view_mut((half, half), (rest, rest)).copy_from(&gram(&second));
    product
}
