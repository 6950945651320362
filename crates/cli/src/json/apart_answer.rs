//! How far two centres are apart, as JSON.

use quarterturn_statistics::{DistanceBound, PlanarEstimate};
use quarterturn_tuning::TogetherVerdict;
use serde::Serialize;

/// At least and at most, and what that is by the archer's own measure.
#[derive(Serialize)]
pub struct ApartAnswer {
    degrees_of_freedom: f64,
    at_least_mm: f64,
    at_most_mm: f64,
    level: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    verdict: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    more_of_each: Option<usize>,
}

impl ApartAnswer {
    /// The answer for centres whose difference is `estimate`.
    pub fn new(
        estimate: &PlanarEstimate,
        at_least_mm: f64,
        at_most: &DistanceBound,
        verdict: Option<TogetherVerdict>,
    ) -> Self {
        let more_of_each = match verdict {
            Some(TogetherVerdict::Open { more }) => more,
            _ => None,
        };
        Self {
            degrees_of_freedom: estimate.degrees_of_freedom,
            at_least_mm,
            at_most_mm: at_most.at_most,
            level: at_most.level,
            verdict: verdict.map(word),
            more_of_each,
        }
    }
}

const fn word(verdict: TogetherVerdict) -> &'static str {
    match verdict {
        TogetherVerdict::Together => "together",
        TogetherVerdict::Apart => "apart",
        TogetherVerdict::Open { .. } => "open",
    }
}
