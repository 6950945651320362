//! Henderson's mixed model equations with the blocks taken out, solved at given variance ratios.

use nalgebra::{DMatrix, DVector};

use super::cross_products::{BlocksOfSize, CrossProducts};
use super::rows::Rows;
use super::symmetric_inverse::SymmetricInverse;

/// The equations at the variance ratios λ = (blocks, first coefficient, second coefficient, …), each a variance in units of
/// the residual variance σ².
///
/// # Formula
/// A block of m rows turns a sum of products into the part within it and the share w = 1/(1 + λ₀m) of the part between
/// blocks (Sherman and Morrison), so that over the columns K = (Z X y) of coefficients, fixed effects and response
/// ```text
/// M = KᵀW K = within + Σ (w/m) s sᵀ        W = (I + λ₀ Z₀Z₀ᵀ)⁻¹
/// ```
/// With S = √λ for the coefficients and 1 for the fixed effects, what is left is one small dense matrix
/// ```text
/// C = S M S + I        (no I for X)        c = C⁻¹ S m_y        yᵀPy = m_yy − (S m_y)ᵀ c
/// ```
///
/// # Source
/// C. R. Henderson, 1975, Best linear unbiased estimation and prediction under a selection model, Biometrics 31, 423; J.
/// Sherman and W. J. Morrison, 1950, Annals of Mathematical Statistics 21, 124 (from memory).
pub struct Equations<'a> {
    pub ratios: DVector<f64>,
    pub products: &'a CrossProducts,
    pub rows: &'a Rows,
    /// The diagonal of S.
    pub scale: DVector<f64>,
    /// C⁻¹.
    pub inverse: DMatrix<f64>,
    /// c: coefficients in units of their standard deviations, then fixed effects.
    pub solution: DVector<f64>,
    /// yᵀPy.
    pub sum_of_squares: f64,
    /// ln det V + ln det XᵀV⁻¹X, V the covariance in units of σ².
    pub log_det: f64,
}

impl<'a> Equations<'a> {
    /// Solves the equations; `None` where rounding leaves them without a solution.
    pub fn solve(
        ratios: DVector<f64>,
        products: &'a CrossProducts,
        rows: &'a Rows,
    ) -> Option<Self> {
        let (width, own) = (rows.width(), rows.all_coefficients());
        let root = |column: usize| ratios[1 + column / rows.levels].sqrt();
        let scale =
            DVector::from_fn(width, |column, _| if column < own { root(column) } else { 1.0 });
        let (mut matrix, mut log_det) = (products.within.clone(), 0.0);
        for blocks in &products.by_size {
            let weight = blocks.weight(ratios[0]);
            add_scaled(&mut matrix, weight / blocks.size, &blocks.sums);
            log_det -= blocks.count * weight.ln();
        }
        let right = matrix.view((0, width), (width, 1)).component_mul(&scale);
        let total = matrix[(width, width)];
        let mut matrix = scaled(matrix.resize(width, width, 0.0), &scale);
        (0..own).for_each(|i| matrix[(i, i)] += 1.0);
        let inverse = SymmetricInverse::of(matrix.as_view())?;
        let rough = &inverse.matrix * &right;
        // A variance far beyond the residual one leaves the inverse few digits; the solution gets them back.
        let solution = &rough + &inverse.matrix * (&right - matrix * &rough);
        Some(Self {
            ratios,
            products,
            rows,
            scale,
            sum_of_squares: total - right.dot(&solution),
            log_det: log_det + inverse.log_det,
            inverse: inverse.matrix,
            solution: solution.column(0).into_owned(),
        })
    }

    /// n − p.
    pub fn freedom(&self) -> f64 {
        (self.rows.n() - self.rows.effects()) as f64
    }

    /// What of −2 ln L depends on the ratios, σ² at its best value.
    pub fn deviance(&self) -> f64 {
        self.log_det + self.freedom() * self.sum_of_squares.ln()
    }

    /// How the residual y − Xβ − Zb is put together from the columns of K.
    pub fn residual(&self) -> DVector<f64> {
        let width = self.rows.width();
        let share = |column: usize| {
            if column < width { -self.scale[column] * self.solution[column] } else { 1.0 }
        };
        DVector::from_fn(width + 1, |column, _| share(column))
    }
}

impl BlocksOfSize {
    /// w = 1/(1 + λ₀m).
    pub fn weight(&self, ratio: f64) -> f64 {
        1.0 / (1.0 + ratio * self.size)
    }
}

/// S A S.
pub fn scaled(mut matrix: DMatrix<f64>, scale: &DVector<f64>) -> DMatrix<f64> {
    for (mut column, factor) in matrix.column_iter_mut().zip(scale.iter()) {
        column.component_mul_assign(scale);
        column *= *factor;
    }
    matrix
}

/// A + f B, without a copy of B.
pub fn add_scaled(matrix: &mut DMatrix<f64>, factor: f64, other: &DMatrix<f64>) {
    matrix.zip_apply(other, |a, b| *a += factor * b);
}
