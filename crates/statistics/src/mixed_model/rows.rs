//! The design's rows as they are summed: scaled covariates, fixed ones orthonormal.

use nalgebra::{DMatrix, DVector};

use super::labels::Labels;
use super::{MixedDesign, MixedError, MixedModel};

/// The rows, one column of `covariates` for each: its random covariates, each of mean square one, then its fixed ones, made
/// orthonormal, which need only hold nearly.
pub struct Rows {
    pub covariates: DMatrix<f64>,
    /// The fixed covariates once more, a column for each.
    orthonormal: DMatrix<f64>,
    /// The columns of the cross products that belong to the covariates of the rows at a level, one column for each level.
    columns: DMatrix<usize>,
    pub blocks: Labels,
    /// Number of levels.
    pub levels: usize,
    /// The level of each row.
    pub level_of: Vec<usize>,
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
        let levels = if coefficients == 0 { &vec![0; n] } else { &design.levels };
        let by_level = Labels::new(levels);
        let levels = by_level.count();
        if levels.saturating_mul(coefficients) > MixedModel::MOST_COEFFICIENTS {
            return Err(MixedError::TooManyLevels { levels, coefficients });
        }
        let triangle = triangle(&design.fixed)?;
        let effects = triangle.nrows();
        let root = triangle.solve_upper_triangular(&DMatrix::identity(effects, effects));
        let root = root.ok_or(MixedError::Collinear { column: 0 })?;
        let orthonormal = &design.fixed * &root;
        let scales = sizes.map(f64::recip);
        let covariates = DMatrix::from_fn(coefficients + effects, n, |covariate, row| {
            match covariate.checked_sub(coefficients) {
                Some(effect) => orthonormal[(row, effect)],
                None => design.random[(row, covariate)] * scales[covariate],
            }
        });
        Ok(Self {
            covariates,
            orthonormal,
            columns: columns(coefficients, levels, effects),
            blocks: Labels::new(&design.blocks),
            levels,
            level_of: by_level.numbers(),
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
        self.coefficients * self.levels
    }

    /// Number of columns of the cross products.
    pub fn width(&self) -> usize {
        self.all_coefficients() + self.effects()
    }

    /// `XᵀX` of the orthonormal covariates, which is nearly the identity.
    pub fn effect_products(&self) -> DMatrix<f64> {
        self.orthonormal.tr_mul(&self.orthonormal)
    }

    /// Takes the orthonormal covariates' effects by least squares off the `response`.
    pub fn take_effects(&self, response: &mut DVector<f64>) -> DVector<f64> {
        let effects = self.orthonormal.tr_mul(response);
        response.gemv(-1.0, &self.orthonormal, &effects, 1.0);
        effects
    }

    /// The columns of the cross products that belong to the covariates of a row, rising.
    pub fn columns_of(&self, row: usize) -> &[usize] {
        let length = self.columns.nrows();
        &self.columns.as_slice()[self.level_of[row] * length..][..length]
    }

    /// The covariates of a row.
    pub fn covariates_of(&self, row: usize) -> &[f64] {
        let length = self.covariates.nrows();
        &self.covariates.as_slice()[row * length..][..length]
    }
}

/// Of each level, the columns of its coefficients and those of all effects.
fn columns(coefficients: usize, levels: usize, effects: usize) -> DMatrix<usize> {
    let own = coefficients * levels;
    let columns =
        (0..levels).flat_map(|level| (level..own).step_by(levels).chain(own..own + effects));
    DMatrix::from_iterator(coefficients + effects, levels, columns)
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
