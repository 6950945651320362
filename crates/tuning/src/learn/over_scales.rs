//! The unknowns with what is not known of the scales: a small weighted ensemble.

use nalgebra::{DMatrix, DVector};

use crate::Scales;
use crate::posterior::Posterior;
use crate::readings::Reader;

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

/// The scales as learned and what else they may be, with the probability of each before the first shot: the archer
/// scatters wider or less wide, the shafts' parts are larger or smaller, the lean goes with the miss more, less or not at
/// all, the bow is far off.
fn neighbours(learned: &Scales) -> [(f64, Scales); 10] {
    [
        (0.20, *learned),
        (0.10, scattering(learned, 1.25)),
        (0.10, scattering(learned, 0.8)),
        (0.10, sized(learned, 1.5)),
        (0.10, sized(learned, 0.67)),
        (0.10, sized(learned, 0.4)),
        (0.06, leaning(learned, 1.4)),
        (0.12, leaning(learned, 0.5)),
        (0.05, leaning(learned, 0.0)),
        (0.07, learned.far_off()),
    ]
}

fn scattering(learned: &Scales, by: f64) -> Scales {
    Scales { bare_mm: learned.bare_mm * by, reference_mm: learned.reference_mm * by, ..*learned }
}

fn sized(learned: &Scales, by: f64) -> Scales {
    Scales {
        centre_mm: learned.centre_mm * by,
        turning_mm: learned.turning_mm * by,
        stiff_mm: learned.stiff_mm * by,
        ..*learned
    }
}

/// Leans that go `by` times as much with misses; what is left of them is then more their own.
fn leaning(learned: &Scales, by: f64) -> Scales {
    let slope = learned.lean_per_miss_deg_per_mm;
    let left = (1.0 - by) * slope * std::f64::consts::FRAC_1_SQRT_2;
    Scales {
        lean_per_miss_deg_per_mm: slope * by,
        discrepancy_deg: learned.discrepancy_deg.hypot(left * learned.turning_mm),
        common_lean_deg: learned.common_lean_deg.hypot(left * learned.common_mm),
        ..*learned
    }
}
