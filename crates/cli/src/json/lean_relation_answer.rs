//! How leans go with misses, as JSON.

use quarterturn_tuning::LeanRelation;
use serde::Serialize;

/// The slope with its interval, and the lean that no miss goes with.
#[derive(Serialize)]
pub struct LeanRelationAnswer {
    slope_deg_per_mm: f64,
    interval_deg_per_mm: [f64; 2],
    level: f64,
    common_lean_deg: [f64; 2],
    shots: usize,
}

impl From<&LeanRelation> for LeanRelationAnswer {
    fn from(relation: &LeanRelation) -> Self {
        let LeanRelation { slope_deg_per_mm, interval, common, shots } = *relation;
        Self {
            slope_deg_per_mm,
            interval_deg_per_mm: [interval.lower, interval.upper],
            level: interval.level,
            common_lean_deg: [common.x.degrees(), common.y.degrees()],
            shots,
        }
    }
}
