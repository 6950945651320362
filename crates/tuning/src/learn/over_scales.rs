//! The unknowns with what is not known of the scales: a small weighted ensemble.

use nalgebra::{DMatrix, DVector};

use super::part_sizes::PartSizes;
use super::slope::SlopeKnown;
use crate::Scales;
use crate::posterior::Posterior;
use crate::readings::Reader;

/// How likely a bow is far off, before the first shot.
const FAR_OFF: f64 = 0.07;

/// What is not known of three scales: the size of the parts, the archer's scatter, the lean that goes with a miss.
const UNKNOWN: f64 = 3.0;

/// Where none of them is moved counts as one of them more.
const AS_LEARNED: f64 = 1.0;

/// The posterior over the scales.
///
/// # Formula
/// Sigma points: with n = 3 scales and κ = 1, the scales as learned with the weight κ/(n + κ), and each of the three moved by
/// ±√(n + κ) of its standard deviations with the weight 1/2(n + κ). All are at a bow that is nearly right; that it is far off
/// has the weight that its marginal likelihood gives it. With weights ωₖ: mean Σ ωₖ μₖ, covariance Σ ωₖ (Σₖ + (μₖ − μ)(μₖ − μ)ᵀ).
///
/// # Source
/// Julier and Uhlmann (1997), Proceedings of SPIE 3068, 182, the sigma points (from memory).
pub fn over_scales(
    reader: &Reader<'_>,
    expected: &Scales,
    parts: PartSizes,
) -> (SlopeKnown, Posterior) {
    let learned = reader.scales;
    let equations = reader.equations();
    let with_prior = |scales: &Scales| reader.posterior(&equations, scales);
    let solve = |scales: &Scales| Reader { scales, ..*reader }.solve().1;
    let (as_learned, far) = (with_prior(learned), with_prior(&learned.far_off()));
    let slope = SlopeKnown::of(reader, expected, as_learned.deviance);
    let odds = (1.0 - FAR_OFF) / FAR_OFF * (0.5 * (far.deviance - as_learned.deviance)).exp();
    let far_weight = (1.0 + odds).recip();
    let all = UNKNOWN + AS_LEARNED;
    let near = |share: f64| (1.0 - far_weight) * share / all;
    let mut members = vec![(far_weight, far), (near(AS_LEARNED), as_learned)];
    for by in [-all.sqrt(), all.sqrt()] {
        let moved = [
            with_prior(&parts.larger(by, learned)),
            solve(&scattering(learned, (by * log_scatter_sd(reader)).exp())),
            solve(&Scales { lean_per_miss_deg_per_mm: slope.more(by), ..*learned }),
        ];
        members.extend(moved.map(|posterior| (near(0.5), posterior)));
    }
    (slope, mixed(reader, &members))
}

/// The standard deviation of the logarithm of the archer's scatter: each hit tells two coordinates of it, of which half the
/// unknowns take one.
fn log_scatter_sd(reader: &Reader<'_>) -> f64 {
    let shots = reader.seen.shots.len() as f64;
    (2.0 * shots + 8.0).sqrt().recip()
}

fn scattering(learned: &Scales, by: f64) -> Scales {
    Scales { bare_mm: learned.bare_mm * by, reference_mm: learned.reference_mm * by, ..*learned }
}

fn mixed(reader: &Reader<'_>, members: &[(f64, Posterior)]) -> Posterior {
    let n = reader.layout.len();
    let (mut mean, mut covariance) = (DVector::zeros(n), DMatrix::zeros(n, n));
    for (weight, member) in members {
        mean.axpy(*weight, &member.mean, 1.0);
    }
    for (weight, member) in members {
        let aside = &member.mean - &mean;
        covariance.ger(*weight, &aside, &aside, 1.0);
        covariance += &member.covariance * *weight;
    }
    let least = members.iter().map(|(_, one)| one.deviance).fold(f64::INFINITY, f64::min);
    Posterior { layout: reader.layout.clone(), mean, covariance, deviance: least }
}
