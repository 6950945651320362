//! The lean that goes with a miss, learned as the slope of a regression between two unknowns.

use quarterturn_statistics::Interval;

use super::end_mean::EndMean;
use crate::Scales;
use crate::design;
use crate::observation::{Kind, Observations};
use crate::posterior::Posterior;
use crate::readings::{Coordinate, Of, Reader};

/// How far the slope may lie from what was expected, as a share of it.
const SLOPE_SD_SHARE: f64 = 0.25;

/// The likelihood is looked at so far to both sides of the slope, as a share of what was expected.
const LOOK_SHARE: f64 = 0.2;

/// The standard normal lies within ± this nine times in ten.
const NINETY_PERCENT: f64 = 1.644_853_626_951_473;

/// The precision with which the slope is held to what was expected.
fn held(expected: &Scales) -> f64 {
    (SLOPE_SD_SHARE * expected.lean_per_miss_deg_per_mm).powi(-2)
}

/// Moves the slope to where the leans put it.
///
/// # Formula
/// With r the residual of a lean and t the miss that it goes with, both expected over the posterior,
/// s ← s + (Σ w E[r t] + (s₀ − s)/v₀) / (Σ w E[t²] + 1/v₀).
pub fn update(
    scales: &mut Scales,
    expected: &Scales,
    before: &Scales,
    seen: &Observations,
    coordinates: &[Coordinate],
    posterior: &Posterior,
) {
    let held = held(expected);
    let slope = before.lean_per_miss_deg_per_mm;
    let mut across = held * (expected.lean_per_miss_deg_per_mm - slope);
    let mut along = held;
    for (at, coordinate) in coordinates.iter().enumerate().filter(|(_, one)| one.of == Of::Lean) {
        let end = EndMean::of(coordinate, posterior);
        for reading in &coordinate.readings {
            let shot = &seen.shots[reading.shot];
            if seen.kind_of(shot) == Kind::Reference {
                continue;
            }
            let miss =
                &design::bare_hit(&posterior.layout, shot.life, shot.bow, shot.mark_rad)[at % 2];
            let mean = posterior.mean_of(miss);
            across += reading.weight * end.expected_residual_product(reading, miss, posterior);
            along += reading.weight * (mean * mean + posterior.variance_of(miss));
        }
    }
    scales.lean_per_miss_deg_per_mm = slope + across / along;
}

/// The slope with how well it is known.
#[derive(Clone, Copy, Debug)]
pub struct SlopeKnown {
    /// Degrees for each millimetre.
    pub deg_per_mm: f64,
    /// Its standard deviation.
    sd_deg_per_mm: f64,
}

impl SlopeKnown {
    /// From how quickly the likelihood falls to both sides of the reader's slope, at which the deviance is `here`.
    ///
    /// # Formula
    /// With D(s) = −2 ln of the marginal likelihood at the slope s, all other scales and weights as learned, and v₀ the
    /// variance before the first shot: precision = ½ (D(s + h) − 2 D(s) + D(s − h)) / h² + 1/v₀ (Laplace's approximation).
    pub fn of(reader: &Reader<'_>, expected: &Scales, here: f64) -> Self {
        let slope = reader.scales.lean_per_miss_deg_per_mm;
        let look = LOOK_SHARE * expected.lean_per_miss_deg_per_mm;
        let [less, more] = [-look, look].map(|by| {
            let scales = &Scales { lean_per_miss_deg_per_mm: slope + by, ..*reader.scales };
            Reader { scales, ..*reader }.solve().1.deviance
        });
        let told = (less - 2.0 * here + more) / (2.0 * look * look);
        let precision = told.max(0.0) + held(expected);
        Self { deg_per_mm: slope, sd_deg_per_mm: precision.sqrt().recip() }
    }

    /// That of `scales`, of which nothing is in doubt.
    pub fn exactly(scales: &Scales) -> Self {
        Self { deg_per_mm: scales.lean_per_miss_deg_per_mm, sd_deg_per_mm: 0.0 }
    }

    /// The slope, so many standard deviations more.
    pub fn more(self, by: f64) -> f64 {
        self.deg_per_mm + by * self.sd_deg_per_mm
    }

    /// The 90 % interval.
    pub fn interval(self) -> Interval {
        let [lower, upper] = [-NINETY_PERCENT, NINETY_PERCENT].map(|by| self.more(by));
        Interval { lower, upper, level: 0.9 }
    }
}
