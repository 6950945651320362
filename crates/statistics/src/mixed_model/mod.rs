//! Linear mixed models with one large and one small random factor, by restricted maximum likelihood.

mod block_sum;
mod cross_products;
mod derivatives;
mod design;
mod equations;
mod error;
mod fit;
mod labels;
mod reading;
mod rows;
mod search;
mod symmetric_inverse;

pub use design::MixedDesign;
pub use error::MixedError;
pub use fit::MixedFit;

use cross_products::CrossProducts;
use nalgebra::DVector;
use reading::Reading;
use rows::Rows;
use search::Search;

use crate::{Level, Sample};

/// A design ready to be fitted to responses: y = Xβ + u(block) + Σⱼ zⱼ bⱼ(level) + ε.
///
/// Every block has a value of its own, u ~ N(0, σ₀²); every level has a coefficient of its own for each random covariate zⱼ,
/// bⱼ ~ N(0, σⱼ²), the coefficients independent of one another; ε ~ N(0, σ²). Blocks and levels may cross in any way, nest, or
/// be one and the same factor. A model with one factor has no random covariates.
///
/// The blocks are taken out in closed form and the rows are summed once, so that a fit costs as much for a million rows as for
/// a thousand once they are summed; of the levels' coefficients there may be [`MOST_COEFFICIENTS`](Self::MOST_COEFFICIENTS).
///
/// The residual variance is good to about 1e-15 of itself times the variance of the response in units of σ²; where that is 1e10,
/// the model counts as fitting exactly.
///
/// # Formula
/// β and the variances, none below zero, minimise
/// ```text
/// −2 ln L = ln det Σ + ln det XᵀΣ⁻¹X + (y − Xβ)ᵀΣ⁻¹(y − Xβ) + (n − p) ln 2π        Σ = Var y
/// ```
/// Standard errors of β are those of (XᵀΣ⁻¹X)⁻¹, those of variances come from the expected information. Intervals of β are
/// Student's with Satterthwaite's degrees of freedom, those of variances chi-squared with groups less one: approximate, a little
/// wide near zero. The likelihood of a few rows can have more than one peak; one of them is found.
///
/// # Example
/// ```
/// use nalgebra::DMatrix;
/// use quarterturn_statistics::{Level, MixedDesign, MixedModel, Sample};
///
/// # fn main() -> Result<(), Box<dyn std::error::Error>> {
/// // Three blocks of three values, and nothing else.
/// let design = MixedDesign {
///     fixed: DMatrix::from_element(9, 1, 1.0),
///     blocks: vec![1, 1, 1, 2, 2, 2, 3, 3, 3],
///     levels: vec![0; 9],
///     random: DMatrix::zeros(9, 0),
/// };
/// let response = Sample::new(vec![4.0, 5.0, 6.0, 9.0, 11.0, 10.0, 1.0, 2.0, 3.0])?;
/// let fit = MixedModel::new(&design)?.fit(&response, Level::P95)?;
/// assert_eq!(format!("{:.3}", fit.residual_variance.value), "1.000");
/// assert_eq!(format!("{:.3}", fit.block_variance.value), "16.000");
/// # Ok(())
/// # }
/// ```
///
/// # Source
/// H. D. Patterson and R. Thompson, 1971, Recovery of inter-block information when block sizes are unequal, Biometrika 58, 545;
/// F. E. Satterthwaite, 1946, An approximate distribution of estimates of variance components, Biometrics Bulletin 2, 110
/// (from memory).
pub struct MixedModel {
    rows: Rows,
    products: CrossProducts,
}

/// A response whose square length falls below this share of what it was is fitted up to rounding.
const EXACT: f64 = 1e-24;

impl MixedModel {
    /// The most coefficients of all levels together.
    pub const MOST_COEFFICIENTS: usize = 2000;

    /// Sums the rows of a design.
    ///
    /// # Errors
    /// [`MixedError`] for covariates that cannot be computed with, that do not pair up with the labels, or of which one
    /// follows from the others.
    pub fn new(design: &MixedDesign) -> Result<Self, MixedError> {
        let rows = Rows::new(design)?;
        let products = CrossProducts::gather(&rows);
        Ok(Self { rows, products })
    }

    /// Fits the model to a response, with intervals at `level`.
    ///
    /// # Errors
    /// [`MixedError`] where rows and values differ in number, where the model fits exactly, or where the design cannot tell
    /// the variances apart.
    pub fn fit(&self, response: &Sample, level: Level) -> Result<MixedFit, MixedError> {
        let (rows, found) = (self.rows.n(), response.n());
        if found != rows {
            return Err(MixedError::CountsDiffer { rows, what: "responses", found });
        }
        let mut residual = DVector::from(response.values().to_vec());
        let square = residual.norm_squared();
        let least_squares = self.rows.take_effects(&mut residual);
        if residual.norm_squared() <= EXACT * square {
            return Err(MixedError::NoScatter);
        }
        let products = self.products.with_response(&self.rows, residual.as_slice());
        let optimum = Search::new(&products, &self.rows).optimum()?;
        Reading::new(&optimum, level)?.fit(&least_squares)
    }
}
