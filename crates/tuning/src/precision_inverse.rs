//! The inverse of a positive definite matrix, by halves, so that nearly all of its work is matrix products.

use nalgebra::DMatrix;

/// Below this size the plain algorithm is faster.
const SMALL: usize = 32;

/// The inverse of a precision matrix, L⁻ᵀ L⁻¹ with L its Cholesky root.
///
/// The prior alone makes a precision positive definite; where rounding undoes that, only its diagonal is inverted.
pub fn precision_inverse(precision: DMatrix<f64>) -> DMatrix<f64> {
    let diagonal = precision.diagonal();
    precision
        .cholesky()
        .and_then(|root| triangular_inverse(&root.unpack()))
        .map_or_else(|| DMatrix::from_diagonal(&diagonal.map(f64::recip)), |root| gram(&root))
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
