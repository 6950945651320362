//! Newton's method for the variance ratios, none of them below zero.

use nalgebra::{DMatrix, DVector};

use super::MixedError;
use super::cross_products::CrossProducts;
use super::derivatives::Derivatives;
use super::equations::Equations;
use super::rows::Rows;

/// The search for the variance ratios λ of the least deviance.
///
/// # Formula
/// It goes in κⱼ = ln tⱼ, tⱼ = λⱼ + 1/mⱼ, mⱼ the rows of a group on average: the logarithm of how much the groups' own means
/// vary, in which the likelihood of equal groups is that of a plain variance, with one well-rounded optimum. λⱼ = 0 is its lower
/// end. It starts near where equal groups would have theirs, the
/// ```text
/// tⱼ ν yᵀPVⱼPy/(yᵀPy tr PVⱼ)        at λⱼ = 1
/// ```
/// of the [`Derivatives`]. Each step is Newton's in the ratios that are not held at zero, from the exact second derivatives or,
/// where these do not point down, from what they are on average; it is halved until the deviance falls.
pub struct Search<'a> {
    products: &'a CrossProducts,
    rows: &'a Rows,
    /// 1/mⱼ.
    offsets: DVector<f64>,
    /// The squares of the response.
    total: f64,
}

/// Where the search ended.
pub struct Optimum<'a> {
    pub equations: Equations<'a>,
    pub derivatives: Derivatives,
    /// 1/mⱼ, by which λⱼ is measured.
    pub offsets: DVector<f64>,
}

const MOST_STEPS: usize = 100;
const MOST_HALVINGS: usize = 30;
/// The search ends where Newton's step promises less than this of the deviance.
const NEGLIGIBLE: f64 = 1e-10;
/// A ratio less than this share of 1/m is zero.
const ZERO: f64 = 1e-8;
/// What stands for zero while its slope is wanted, which is a difference over λ: small enough to be zero, large enough to leave
/// half the digits.
const NOUGHT: f64 = 1e-9;
/// A sum of squares below this share of the response's own has too few digits left.
const EXACT: f64 = 1e-10;
/// The longest step in any κ.
const LONGEST: f64 = 3.0;
/// Deviances closer than this share of themselves, and of what their sum of squares was the difference of, differ by rounding
/// alone.
const ROUNDING: f64 = 1e-13;

impl<'a> Search<'a> {
    pub fn new(products: &'a CrossProducts, rows: &'a Rows) -> Self {
        let width = rows.width();
        let share = |groups: usize| groups as f64 / rows.n() as f64;
        let mut offsets = DVector::from_element(1 + rows.coefficients, share(rows.levels));
        offsets[0] = share(rows.blocks.count());
        let sums = products.by_size.iter().map(|blocks| blocks.sums[(width, width)] / blocks.size);
        let total = products.within[(width, width)] + sums.sum::<f64>();
        Self { products, rows, offsets, total }
    }

    /// The optimum.
    pub fn optimum(self) -> Result<Optimum<'a>, MixedError> {
        let mut equations = self.start()?;
        for _ in 0..MOST_STEPS {
            let derivatives = Derivatives::of(&equations);
            let step = self.step(&equations, &derivatives)?;
            if step.promise < NEGLIGIBLE {
                let exact = self.exact(&equations.ratios);
                if exact != equations.ratios {
                    equations = self.equations(exact)?;
                }
                return Ok(Optimum { equations, derivatives, offsets: self.offsets });
            }
            equations = self.downhill(&equations, &step)?;
        }
        Err(MixedError::NotConverged { steps: MOST_STEPS })
    }

    /// Nearly where equal groups would have their optimum.
    fn start(&self) -> Result<Equations<'a>, MixedError> {
        let equal = self.equations(DVector::from_element(self.offsets.len(), 1.0))?;
        let excess = Derivatives::of(&equal).excess(&equal);
        let sums = self.offsets.add_scalar(1.0).component_mul(&excess);
        self.equations(sums.map_with_location(|j, _, sum| self.ratio(j, sum)))
    }

    fn equations(&self, ratios: DVector<f64>) -> Result<Equations<'a>, MixedError> {
        let equations = Equations::solve(ratios, self.products, self.rows);
        equations.filter(|it| it.sum_of_squares > EXACT * self.total).ok_or(MixedError::NoScatter)
    }

    /// Newton's step in κ from where `equations` stand.
    fn step(&self, equations: &Equations, derivatives: &Derivatives) -> Result<Step, MixedError> {
        let kappa = &equations.ratios + &self.offsets;
        let slopes = derivatives.slopes(equations);
        let held = |j: usize| slopes[j] >= 0.0 && self.is_zero(j, equations.ratios[j]);
        let free: Vec<_> = (0..kappa.len()).filter(|&j| !held(j)).collect();
        let inward = |curvature: DMatrix<f64>| {
            let both = curvature.component_mul(&(&kappa * kappa.transpose()));
            both.select_rows(&free).select_columns(&free)
        };
        let slopes = slopes.component_mul(&kappa).select_rows(&free);
        let exact = inward(derivatives.curvature(equations)) + DMatrix::from_diagonal(&slopes);
        let average = || inward(derivatives.expected_curvature(equations)).cholesky();
        let root = exact.cholesky().or_else(average).ok_or(MixedError::Confounded)?;
        let solution = -root.solve(&slopes);
        let shorten = (LONGEST / solution.amax()).min(1.0);
        let mut kappa = DVector::zeros(kappa.len());
        free.iter().zip(solution.iter()).for_each(|(&j, change)| kappa[j] = shorten * change);
        Ok(Step { kappa, promise: -slopes.dot(&solution) })
    }

    /// The first of the whole step, half of it, a quarter, … that lowers the deviance.
    fn downhill(&self, here: &Equations, step: &Step) -> Result<Equations<'a>, MixedError> {
        let lost = here.freedom() * self.total / here.sum_of_squares;
        let ceiling = here.deviance() + ROUNDING * (here.deviance().abs() + lost);
        let mut change = step.kappa.clone();
        for _ in 0..MOST_HALVINGS {
            let ratio =
                |j: usize| self.ratio(j, (here.ratios[j] + self.offsets[j]) * change[j].exp());
            let there = self.equations(DVector::from_fn(change.len(), |j, _| ratio(j)))?;
            if there.deviance() <= ceiling {
                return Ok(there);
            }
            change *= 0.5;
        }
        Err(MixedError::NotConverged { steps: MOST_HALVINGS })
    }

    /// λⱼ from λⱼ + 1/mⱼ, not below what stands for zero.
    fn ratio(&self, j: usize, sum: f64) -> f64 {
        let ratio = sum - self.offsets[j];
        if self.is_zero(j, ratio) { NOUGHT * self.offsets[j] } else { ratio }
    }

    /// The ratios with zero in place of what stood for it.
    fn exact(&self, ratios: &DVector<f64>) -> DVector<f64> {
        ratios.map_with_location(|j, _, ratio| if self.is_zero(j, ratio) { 0.0 } else { ratio })
    }

    fn is_zero(&self, j: usize, ratio: f64) -> bool {
        ratio < ZERO * self.offsets[j]
    }
}

struct Step {
    kappa: DVector<f64>,
    /// Twice what the step would lower the deviance by, were it a parabola.
    promise: f64,
}

impl Optimum<'_> {
    /// λⱼ + 1/mⱼ.
    pub fn sum(&self, j: usize) -> f64 {
        self.equations.ratios[j] + self.offsets[j]
    }
}
