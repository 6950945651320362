//! What the shafts are to match, as JSON.

use quarterturn_journal::Word;
use quarterturn_tuning::{Matching, MeasuredFrom};
use serde::Serialize;

use super::matrix::{covariance, pair};

/// The aim, and of a set where its common point lies from the reference.
#[derive(Serialize)]
pub struct AimAnswer {
    aim: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    common_point_mm: Option<[f64; 2]>,
    #[serde(skip_serializing_if = "Option::is_none")]
    common_point_cov_mm2: Option<[[f64; 2]; 2]>,
}

impl From<MeasuredFrom> for AimAnswer {
    fn from(from: MeasuredFrom) -> Self {
        let (matching, point) = match from {
            MeasuredFrom::Reference => (Matching::Reference, None),
            MeasuredFrom::CommonPoint(point) => (Matching::Set, Some(point)),
        };
        Self {
            aim: matching.word(),
            common_point_mm: point.map(|point| pair(point.mean)),
            common_point_cov_mm2: point.as_ref().map(covariance),
        }
    }
}
