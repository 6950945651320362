//! The unknowns with what is not known of the scales: a small weighted ensemble.

use nalgebra::{DMatrix, DVector};

use crate::Scales;
use crate::posterior::Posterior;
use crate::readings::Reader;

/// The archer's scatter may be so much narrower or wider than learned...
const SCATTER: f64 = 1.25;

/// ... and the shafts' parts so much smaller or larger.
const SIZES: f64 = 1.5;

/// A bow that is nearly right is off by this share of one that may be far off...
const NEARLY_RIGHT: f64 = 0.2;

/// ... and so likely before the first shot.
const NEARLY_RIGHT_BEFORE: f64 = 0.85;

/// The posterior over the learned scales and their neighbours, each weighed by its marginal likelihood.
///
/// # Formula
/// With weights ωₖ ∝ πₖ p(y | scalesₖ), πₖ the probability of the scales before the first shot: mean Σ ωₖ μₖ, covariance Σ ωₖ (Σₖ + (μₖ − μ)(μₖ − μ)ᵀ).
pub fn over_scales(reader: &Reader<'_>) -> Posterior {
    let members = neighbours(reader.scales).map(|(before, scales)| {
        let posterior = Reader { scales: &scales, ..*reader }.solve().1;
        (before, posterior)
    });
    let least = members.iter().map(|(_, one)| one.deviance).fold(f64::INFINITY, f64::min);
    let likely =
        members.each_ref().map(|(before, one)| before * (-0.5 * (one.deviance - least)).exp());
    let all: f64 = likely.iter().sum();
    let n = reader.layout.len();
    let (mut mean, mut covariance) = (DVector::zeros(n), DMatrix::zeros(n, n));
    for ((_, member), likely) in members.iter().zip(&likely) {
        mean.axpy(likely / all, &member.mean, 1.0);
    }
    for ((_, member), likely) in members.iter().zip(&likely) {
        let aside = &member.mean - &mean;
        covariance.ger(likely / all, &aside, &aside, 1.0);
        covariance += &member.covariance * (likely / all);
    }
    Posterior { layout: reader.layout.clone(), mean, covariance, deviance: least }
}

/// The scales themselves, with other scatter, with other sizes of the shafts' parts, and with a bow that may be far off.
fn neighbours(learned: &Scales) -> [(f64, Scales); 6] {
    let near = Scales { common_mm: learned.common_mm * NEARLY_RIGHT, ..*learned };
    let scatter = |by: f64| Scales {
        bare_mm: near.bare_mm * by,
        reference_mm: near.reference_mm * by,
        ..near
    };
    let sizes = |by: f64| Scales {
        centre_mm: near.centre_mm * by,
        turning_mm: near.turning_mm * by,
        stiff_mm: near.stiff_mm * by,
        ..near
    };
    let near = [near, scatter(SCATTER), scatter(1.0 / SCATTER), sizes(SIZES), sizes(1.0 / SIZES)];
    let [a, b, c, d, e] = near.map(|scales| (NEARLY_RIGHT_BEFORE / near.len() as f64, scales));
    [a, b, c, d, e, (1.0 - NEARLY_RIGHT_BEFORE, *learned)]
}
