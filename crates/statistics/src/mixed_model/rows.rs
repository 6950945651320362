//! The design's rows as they are summed: scaled covariates, fixed ones orthonormal.

use nalgebra::{DMatrix, DVector, DVectorView};

use super::labels::Labels;
use super::{MixedDesign, MixedError, MixedModel};

/// The rows, one column of `covariates` for each: its random covariates, each of mean square one, then its fixed ones, made
/// orthonormal, which need only hold nearly.
pub struct Rows {
    pub covariates: DMatrix<f64>,
    /// The fixed covariates once more, a column for each.
    orthonormal: DMatrix<f64>,
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
const COLLINEAR: f64 = 1e-6;

impl Rows {
    pub fn new(design: &MixedDesign) -> Result<Self, MixedError> {
        design.validate()?;
        let sizes = design.random_sizes()?;
        let (n, coefficients) = design.random.shape();
        let levels =
            if coefficients == 0 { Labels::new(&vec![0; n]) } else { Labels::new(&design.levels) };
        if levels.count.saturating_mul(coefficients) > MixedModel::MOST_COEFFICIENTS {
            return Err(MixedError::TooManyLevels { levels: levels.count, coefficients });
        }
        let triangle = triangle(&design.fixed)?;
        let effects = triangle.nrows();
        let root = triangle.solve_upper_triangular(&DMatrix::identity(effects, effects));
        let root = root.ok_or(MixedError::Collinear { column: 0 })?;
        let mut covariates = DMatrix::zeros(coefficients + effects, n);
        for (covariate, size) in sizes.iter().enumerate() {
            put_column(&mut covariates, covariate, size.recip(), &design.random, covariate);
        }
        let orthonormal = &design.fixed * &root;
        for effect in 0..effects {
            put_column(&mut covariates, coefficients + effect, 1.0, &orthonormal, effect);
        }
        Ok(Self {
            covariates,
            orthonormal,
            blocks: Labels::new(&design.blocks),
            levels,
            coefficients,
            sizes,
            root,
            log_det: triangle.diagonal().map(f64::ln).sum(),
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

    /// Effects of the orthonormal covariates by least squares, and what they leave of `response`.
    pub fn least_squares(&self, response: DVectorView<f64>) -> (DVector<f64>, DVector<f64>) {
        let effects = self.orthonormal.tr_mul(&response);
        let left = response - &self.orthonormal * &effects;
        (effects, left)
    }

    /// The covariates of a row.
    pub fn covariates_of(&self, row: usize) -> &[f64] {
        let length = self.covariates.nrows();
        &self.covariates.as_slice()[row * length..(row + 1) * length]
    }

    /// The columns of the cross products that belong to the covariates of the rows at a level, rising.
    pub fn columns_of(&self, level: usize) -> impl Iterator<Item = usize> {
        let random =
            (0..self.coefficients).map(move |covariate| covariate * self.levels.count + level);
        random.chain(self.all_coefficients()..self.width())
    }
}

/// Puts a multiple of a column of `from` into a row of `to`.
fn put_column(to: &mut DMatrix<f64>, row: usize, factor: f64, from: &DMatrix<f64>, column: usize) {
    to.row_mut(row).iter_mut().zip(&from.column(column)).for_each(|(to, x)| *to = factor * x);
}

/// R of the fixed covariates X = QR.
fn triangle(fixed: &DMatrix<f64>) -> Result<DMatrix<f64>, MixedError> {
    let products = fixed.tr_mul(fixed);
    let mut root = DMatrix::zeros(0, 0);
    for column in 0..products.ncols() {
        let leading = products.view((0, 0), (column + 1, column + 1)).into_owned().cholesky();
        let least = COLLINEAR * products[(column, column)].sqrt();
        root = leading.map(|leading| leading.l()).ok_or(MixedError::Collinear { column })?;
        if root[(column, column)] <= least {
            return Err(MixedError::Collinear { column });
        }
    }
    Ok(root.transpose())
}
