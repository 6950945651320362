//! The unknowns with what is not known of the scales: a small weighted ensemble.

use nalgebra::{DMatrix, DVector};

use crate::Scales;
use crate::posterior::Posterior;
use crate::readings::Reader;

/// The archer's scatter may be so much narrower or wider than learned...
const SCATTER: f64 = 1.25;

/// ... and the shafts' parts so much smaller or larger.
const SIZES: f64 = 1.5;

/// The posterior over the learned scales and their neighbours, each weighed by its marginal likelihood.
///
/// # Formula
/// With weights ωₖ ∝ p(y | scalesₖ): mean Σ ωₖ μₖ, covariance Σ ωₖ (Σₖ + (μₖ − μ)(μₖ − μ)ᵀ).
pub fn over_scales(reader: &Reader<'_>) -> Posterior {
    let members =
        neighbours(reader.scales).map(|scales| Reader { scales: &scales, ..*reader }.solve().1);
    let least = members.iter().map(|one| one.deviance).fold(f64::INFINITY, f64::min);
    let likely: Vec<f64> =
        members.iter().map(|one| (-0.5 * (one.deviance - least)).exp()).collect();
    let all: f64 = likely.iter().sum();
    let n = reader.layout.len();
    let (mut mean, mut covariance) = (DVector::zeros(n), DMatrix::zeros(n, n));
    for (member, likely) in members.iter().zip(&likely) {
        mean.axpy(likely / all, &member.mean, 1.0);
    }
    for (member, likely) in members.iter().zip(&likely) {
        let aside = &member.mean - &mean;
        covariance.ger(likely / all, &aside, &aside, 1.0);
        covariance += &member.covariance * (likely / all);
    }
    Posterior { layout: reader.layout.clone(), mean, covariance, deviance: least }
}

/// The scales themselves, with other scatter, and with other sizes of the shafts' parts.
fn neighbours(scales: &Scales) -> [Scales; 5] {
    let scatter = |by: f64| Scales {
        bare_mm: scales.bare_mm * by,
        reference_mm: scales.reference_mm * by,
        ..*scales
    };
    let sizes = |by: f64| Scales {
        centre_mm: scales.centre_mm * by,
        turning_mm: scales.turning_mm * by,
        stiff_mm: scales.stiff_mm * by,
        ..*scales
    };
    [*scales, scatter(SCATTER), scatter(1.0 / SCATTER), sizes(SIZES), sizes(1.0 / SIZES)]
}
