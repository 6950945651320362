//! Slopes and curvatures of the restricted likelihood in the variance ratios.

use nalgebra::{DMatrix, DVector};

use super::equations::{Equations, add_scaled, scaled};

/// Traces and quadratic forms, which make the derivatives.
///
/// # Formula
/// With J = I − C⁻¹ of the [`Equations`] and N = Σ w² s sᵀ over the blocks,
/// ```text
/// P = V⁻¹ − V⁻¹X(XᵀV⁻¹X)⁻¹XᵀV⁻¹    tr PVⱼ = tr Jⱼⱼ/λⱼ       tr PVⱼPVₖ = |Jⱼₖ|²/(λⱼλₖ)
/// Vⱼ = ZⱼZⱼᵀ                       yᵀPVⱼPy = |cⱼ|²/λⱼ      yᵀPVⱼPVₖPy = cⱼᵀJⱼₖcₖ/(λⱼλₖ)
/// blocks                           S ZᵀPV₀PZ S = C⁻¹ S N S C⁻¹
/// ```
/// and the like by sums over the blocks themselves.
///
/// # Source
/// D. A. Harville, 1977, Maximum likelihood approaches to variance component estimation, Journal of the American Statistical
/// Association 72, 320 (from memory; the block part derived anew).
pub struct Derivatives {
    /// `tr PVⱼ`.
    pub traces: DVector<f64>,
    /// `tr PVⱼPVₖ`.
    pub trace_products: DMatrix<f64>,
    /// `yᵀPVⱼPy`.
    pub forms: DVector<f64>,
    /// `yᵀPVⱼPVₖPy`.
    pub form_products: DMatrix<f64>,
    /// The derivatives of (XᵀV⁻¹X)⁻¹, the covariance of the fixed effects in units of σ².
    pub covariances: Vec<DMatrix<f64>>,
}

impl Derivatives {
    pub fn of(equations: &Equations) -> Self {
        let count = equations.ratios.len();
        let mut all = Self {
            traces: DVector::zeros(count),
            trace_products: DMatrix::zeros(count, count),
            forms: DVector::zeros(count),
            form_products: DMatrix::zeros(count, count),
            covariances: vec![],
        };
        all.add_blocks(equations);
        all.add_coefficients(equations);
        all
    }

    /// The slopes of the deviance: `tr PVⱼ − ν yᵀPVⱼPy/yᵀPy`.
    pub fn slopes(&self, equations: &Equations) -> DVector<f64> {
        &self.traces - &self.forms * (equations.freedom() / equations.sum_of_squares)
    }

    /// Its second derivatives: `−tr PVⱼPVₖ + ν (2 yᵀPVⱼPVₖPy/yᵀPy − yᵀPVⱼPy yᵀPVₖPy/(yᵀPy)²)`.
    pub fn curvature(&self, equations: &Equations) -> DMatrix<f64> {
        let forms = &self.forms / equations.sum_of_squares;
        let products = &self.form_products * (2.0 / equations.sum_of_squares);
        (products - &forms * forms.transpose()) * equations.freedom() - &self.trace_products
    }

    /// How many times as much as expected the groups' own means vary, `ν yᵀPVⱼPy/(yᵀPy tr PVⱼ)`; one where that cannot be told.
    pub fn excess(&self, equations: &Equations) -> DVector<f64> {
        let scale = equations.freedom() / equations.sum_of_squares;
        let excess = |form, trace| if trace > 0.0 { scale * form / trace } else { 1.0 };
        self.forms.zip_map(&self.traces, excess)
    }

    /// What the second derivatives are on average: `tr PVⱼPVₖ − tr PVⱼ tr PVₖ/ν`.
    pub fn expected_curvature(&self, equations: &Equations) -> DMatrix<f64> {
        &self.trace_products - &self.traces * self.traces.transpose() / equations.freedom()
    }

    /// All that belongs to the blocks.
    fn add_blocks(&mut self, equations: &Equations) {
        let (rows, inverse) = (equations.rows, &equations.inverse);
        let width = rows.width();
        let (residual, spread) = (equations.residual(), scaled(inverse.clone(), &equations.scale));
        let (mut between, mut seen) =
            (DMatrix::zeros(width + 1, width + 1), DVector::zeros(width + 1));
        for blocks in &equations.products.by_size {
            let (size, weight) = (blocks.size, blocks.weight(equations.ratios[0]));
            let sums = &blocks.sums * &residual;
            let form = sums.dot(&residual);
            let trace = spread.dot(&blocks.sums.view((0, 0), (width, width)));
            self.traces[0] += blocks.count * size * weight - weight.powi(2) * trace;
            self.forms[0] += weight.powi(2) * form;
            self.trace_products[(0, 0)] +=
                blocks.count * (size * weight).powi(2) - 2.0 * size * weight.powi(3) * trace;
            self.form_products[(0, 0)] += size * weight.powi(3) * form;
            add_scaled(&mut between, weight.powi(2), &blocks.sums);
            seen += sums * weight.powi(2);
        }
        let seen = seen.rows(0, width).component_mul(&equations.scale);
        let answer = inverse * &seen;
        self.form_products[(0, 0)] -= seen.dot(&answer);
        let product = inverse * scaled(between.resize(width, width, 0.0), &equations.scale);
        self.trace_products[(0, 0)] += product.dot(&product.transpose());
        let (own, effects) = (rows.all_coefficients(), rows.effects());
        self.covariances.push(product.rows(own, effects) * inverse.columns(own, effects));
        self.add_across(equations, &product, &answer);
    }

    /// What blocks and coefficients have in common; `product` is C⁻¹ S N S, `answer` the same product with the residual.
    fn add_across(&mut self, equations: &Equations, product: &DMatrix<f64>, answer: &DVector<f64>) {
        let levels = equations.rows.levels;
        let diagonal = product.component_mul(&equations.inverse).column_sum();
        for (j, ratio) in equations.ratios.iter().enumerate().skip(1) {
            let first = (j - 1) * levels;
            let solution = equations.solution.rows(first, levels);
            let trace = diagonal.rows(first, levels).sum() / ratio;
            let form = answer.rows(first, levels).dot(&solution) / ratio;
            (self.trace_products[(0, j)], self.trace_products[(j, 0)]) = (trace, trace);
            (self.form_products[(0, j)], self.form_products[(j, 0)]) = (form, form);
        }
    }

    /// All that belongs to the coefficients alone.
    fn add_coefficients(&mut self, equations: &Equations) {
        let (rows, ratios) = (equations.rows, &equations.ratios);
        let (own, levels) = (rows.all_coefficients(), rows.levels);
        let shrinkage = DMatrix::identity(own, own) - equations.inverse.view((0, 0), (own, own));
        let part = |j: usize| equations.solution.rows((j - 1) * levels, levels);
        for j in 1..ratios.len() {
            for k in 1..ratios.len() {
                let block = shrinkage.view(((j - 1) * levels, (k - 1) * levels), (levels, levels));
                let both = ratios[j] * ratios[k];
                self.trace_products[(j, k)] = block.norm_squared() / both;
                self.form_products[(j, k)] = part(j).dot(&(block * part(k))) / both;
                if j == k {
                    self.traces[j] = block.trace() / ratios[j];
                    self.forms[j] = part(j).norm_squared() / ratios[j];
                }
            }
            let beside = equations.inverse.view(((j - 1) * levels, own), (levels, rows.effects()));
            self.covariances.push(beside.transpose() * beside / ratios[j]);
        }
    }
}
