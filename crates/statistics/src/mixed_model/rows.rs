//! The design's rows as they are summed: scaled covariates, fixed ones orthonormal.

use nalgebra::{DMatrix, DMatrixView, DVector, Dyn, U1};

use super::labels::Labels;
use super::{MixedDesign, MixedError, MixedModel};

/// The rows, one column of `covariates` for each: its random covariates, each of mean square one, then its fixed ones, made
/// orthonormal.
pub struct Rows {
    pub covariates: DMatrix<f64>,
    pub blocks: Labels,
    pub levels: Labels,
    /// Number of random covariates.
    pub coefficients: usize,
    /// What each random covariate was divided by.
    pub sizes: DVector<f64>,
    /// R⁻¹ of the fixed covariates X = QR.
    pub root: DMatrix<f64>,
    /// ln |det R|.
    pub log_det: f64,
}

/// A column that keeps less than this share of its length beside the earlier ones follows from them.
const COLLINEAR: f64 = 1e-10;

impl Rows {
    pub fn new(design: &MixedDesign) -> Result<Self, MixedError> {
        design.validate()?;
        let sizes = design.random_sizes()?;
        let (n, coefficients) = design.random.shape();
        let levels = if coefficients == 0 { Labels::new(&[]) } else { Labels::new(&design.levels) };
        if levels.count.saturating_mul(coefficients) > MixedModel::MOST_COEFFICIENTS {
            return Err(MixedError::TooManyLevels { levels: levels.count, coefficients });
        }
        let qr = design.fixed.clone().qr();
        let triangle = qr.r();
        let pivots = triangle.diagonal().abs();
        let collinear =
            |&column: &usize| pivots[column] <= COLLINEAR * design.fixed.column(column).norm();
        if let Some(column) = (0..pivots.len()).find(collinear) {
            return Err(MixedError::Collinear { column });
        }
        let (effects, orthonormal) = (pivots.len(), qr.q());
        let root = triangle.solve_upper_triangular(&DMatrix::identity(effects, effects));
        let covariate = |row: usize, column: usize| match column.checked_sub(coefficients) {
            None => design.random[(row, column)] / sizes[column],
            Some(fixed) => orthonormal[(row, fixed)],
        };
        Ok(Self {
            covariates: DMatrix::from_fn(coefficients + effects, n, |c, r| covariate(r, c)),
            blocks: Labels::new(&design.blocks),
            levels,
            coefficients,
            sizes,
            root: root.ok_or(MixedError::Collinear { column: 0 })?,
            log_det: pivots.map(f64::ln).sum(),
        })
    }

    pub fn n(&self) -> usize {
        self.covariates.ncols()
    }

    /// Number of fixed effects.
    pub fn effects(&self) -> usize {
        self.root.nrows()
    }

    /// Number of coefficients of all levels: those of the first random covariate, level by level, then of the second, …
    pub fn all_coefficients(&self) -> usize {
        self.coefficients * self.levels.count
    }

    /// Number of columns of the cross products.
    pub fn width(&self) -> usize {
        self.all_coefficients() + self.effects()
    }

    /// The orthonormal fixed covariates, a column for each row of the design.
    pub fn fixed(&self) -> DMatrixView<'_, f64, U1, Dyn> {
        self.covariates.rows(self.coefficients, self.effects())
    }

    /// The covariates of a row.
    pub fn covariates_of(&self, row: usize) -> &[f64] {
        let length = self.covariates.nrows();
        &self.covariates.as_slice()[row * length..(row + 1) * length]
    }

    /// The columns of the cross products that belong to the covariates of a row, rising.
    pub fn columns_of(&self, row: usize) -> impl Iterator<Item = usize> {
        let level = self.levels.of_row.get(row).copied().unwrap_or_default();
        let random =
            (0..self.coefficients).map(move |covariate| covariate * self.levels.count + level);
        random.chain(self.all_coefficients()..self.width())
    }
}
