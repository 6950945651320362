//! The archer's own group, as JSON.

use quarterturn_tuning::Spread;
use serde::Serialize;

/// A standard deviation per axis with its interval.
#[derive(Serialize)]
pub struct ArcherAnswer {
    spread_mm: f64,
    interval_mm: [f64; 2],
    level: f64,
    degrees_of_freedom: usize,
    shots: usize,
}

impl From<&Spread> for ArcherAnswer {
    fn from(spread: &Spread) -> Self {
        let interval = spread.interval;
        Self {
            spread_mm: spread.per_axis.mm(),
            interval_mm: [interval.lower, interval.upper],
            level: interval.level,
            degrees_of_freedom: spread.degrees_of_freedom,
            shots: spread.shots,
        }
    }
}
