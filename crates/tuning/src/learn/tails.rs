//! Shots that fly far, and shafts that do not repeat.

use super::residuals::Residuals;
use crate::Scales;
use crate::observation::{Kind, Observations};
use crate::readings::ShotWeight;

/// Degrees of freedom of the tails of single shots: about one shot in twenty flies far.
const TAIL: f64 = 6.0;

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

    /// The probability that the shaft does not repeat.
    pub fn probability(&self) -> f64 {
        let loose = WIDER.iter().zip(self.0).filter(|((wider, _), _)| *wider >= DOES_NOT_REPEAT);
        loose.map(|(_, probability)| probability).sum()
    }
}

/// How widely each life's shots scatter, from their residuals.
pub fn looseness(seen: &Observations, residuals: &Residuals, scales: &Scales) -> Vec<Looseness> {
    let mut log = vec![WIDER.map(|(_, before)| before.ln()); seen.lives.len()];
    for (at, shot) in seen.shots.iter().enumerate() {
        if seen.kind_of(shot) == Kind::Reference {
            continue;
        }
        add_shot(&mut log[shot.life], scales.rounded_mm2(residuals.hit[at]), scales);
    }
    log.into_iter().map(normalised).collect()
}

/// How widely a life's shots scatter, had some of its shots not been shot.
pub fn looseness_without(
    seen: &Observations,
    residuals_mm2: &[f64],
    scales: &Scales,
    life: usize,
    without: &[usize],
) -> Looseness {
    let mut log = WIDER.map(|(_, before)| before.ln());
    for (at, shot) in seen.shots.iter().enumerate() {
        if shot.life == life && !without.contains(&at) {
            add_shot(&mut log, residuals_mm2[at], scales);
        }
    }
    normalised(log)
}

/// Adds what a shot tells of the widths, from the square of its residual.
fn add_shot(log: &mut [f64; 4], square_mm2: f64, scales: &Scales) {
    let square = square_mm2 / (scales.bare_mm * scales.bare_mm);
    for (log, (wider, _)) in log.iter_mut().zip(WIDER) {
        *log -= 2.0 * wider.ln() + tail_exponent() * (square / (TAIL * wider * wider)).ln_1p();
    }
}

/// How much each shot counts.
pub fn weights(
    seen: &Observations,
    residuals: &Residuals,
    scales: &Scales,
    looseness: &[Looseness],
) -> Vec<ShotWeight> {
    let weigh = |(at, shot): (usize, &crate::observation::Observation)| {
        let bare = seen.kind_of(shot) == Kind::Bare;
        let (hit_mm, lean_deg) = if bare {
            (scales.bare_mm, scales.bare_lean_deg)
        } else {
            (scales.reference_mm, scales.reference_lean_deg)
        };
        let hit = scales.rounded_mm2(residuals.hit[at]) / (hit_mm * hit_mm);
        let lean = residuals.lean[at].map_or(0.0, |lean| lean / (lean_deg * lean_deg));
        let Looseness(widths) = looseness[shot.life];
        let over_widths = WIDER.iter().zip(widths).map(|((wider, _), probability)| {
            let squared = wider * wider;
            probability * (TAIL + 2.0) / (TAIL + hit / squared) / squared
        });
        ShotWeight { hit: over_widths.sum(), lean: (TAIL + 2.0) / (TAIL + lean) }
    };
    seen.shots.iter().enumerate().map(weigh).collect()
}

/// (ν + 2) / 2, the exponent of a planar t density.
fn tail_exponent() -> f64 {
    f64::midpoint(TAIL, 2.0)
}

fn normalised(log: [f64; 4]) -> Looseness {
    let most = log.into_iter().fold(f64::MIN, f64::max);
    let likely = log.map(|one| (one - most).exp());
    let sum: f64 = likely.iter().sum();
    Looseness(likely.map(|one| one / sum))
}
