//! How widely the shots of a shaft scatter, beside those of the others.

use nalgebra::{Matrix2, Vector2};

use super::foretold::Foretold;
use super::tails;
use crate::Scales;
use crate::evidence::Evidence;

/// How many times as widely a shaft may scatter, and how likely that is before it is shot.
const WIDER: [(f64, f64); 4] = [(1.0, 0.90), (1.8, 0.04), (2.6, 0.04), (3.6, 0.02)];

/// A shaft that scatters so many times as widely as the others does not repeat.
const DOES_NOT_REPEAT: f64 = 1.7;

/// How likely each of the widths in [`WIDER`] is for one shaft.
#[derive(Clone, Copy, Debug)]
pub struct Looseness([f64; 4]);

impl Looseness {
    /// Before it is shot.
    pub const BEFORE: Self = Self([WIDER[0].1, WIDER[1].1, WIDER[2].1, WIDER[3].1]);

    /// Of each life.
    pub fn of_each(evidence: &Evidence<'_>, scales: &Scales) -> Vec<Self> {
        evidence.foretold().iter().map(|hits| Self::of(hits, scales, &[])).collect()
    }

    /// From the hits of a shaft, but for those in `without`.
    ///
    /// # Formula
    /// The weight of a width is πₖ Π p(hit | all other shafts and the hits before it, width k): each hit is foretold, held against a
    /// planar t, and then taken into what foretells the next.
    pub fn of(hits: &[Foretold], scales: &Scales, without: &[usize]) -> Self {
        let log = WIDER.map(|(wider, before)| {
            let each = hits.iter().map(|some| log_likelihood(some, scales, wider, without));
            before.ln() + each.sum::<f64>()
        });
        let most = log.into_iter().fold(f64::MIN, f64::max);
        let likely = log.map(|one| (one - most).exp());
        let sum: f64 = likely.iter().sum();
        Self(likely.map(|one| one / sum))
    }

    /// The probability that the shaft does not repeat.
    pub fn probability(&self) -> f64 {
        let loose = self.widths().filter(|(wider, _)| *wider >= DOES_NOT_REPEAT);
        loose.map(|(_, probability)| probability).sum()
    }

    /// The widths it may have, and how likely each is.
    pub fn widths(self) -> impl Iterator<Item = (f64, f64)> {
        WIDER.into_iter().zip(self.0).map(|((wider, _), probability)| (wider, probability))
    }
}

/// ln p of hits of a shaft that scatters `wider` times as much as the others.
fn log_likelihood(hits: &Foretold, scales: &Scales, wider: f64, without: &[usize]) -> f64 {
    let (mut off, mut known) = (hits.off.clone(), hits.known.clone());
    let scatter = Vector2::from(scales.along_axes()).map(|axis| {
        let sd_mm = scales.bare_mm * axis * wider;
        sd_mm * sd_mm
    });
    let mut log = 0.0;
    for (place, _) in hits.shots.iter().enumerate().filter(|(_, shot)| !without.contains(shot)) {
        let at = 2 * place;
        let own: Matrix2<f64> = known.fixed_view::<2, 2>(at, at).into();
        let own_off: Vector2<f64> = off.fixed_rows::<2>(at).into();
        let read = Vector2::new(hits.read_mm2[at], hits.read_mm2[at + 1]);
        let spread = |weight: f64| own + Matrix2::from_diagonal(&(scatter / weight + read));
        let Some(precision) = spread(1.0).try_inverse() else { continue };
        let square = own_off.dot(&(precision * own_off));
        log += 0.5 * precision.determinant().ln() + tails::log_density(square);
        let Some(precision) = spread(tails::weight(square)).try_inverse() else { continue };
        let bears = known.columns(at, 2).into_owned();
        let gain = &bears * precision;
        off -= &gain * own_off;
        known -= gain * bears.transpose();
    }
    log
}
