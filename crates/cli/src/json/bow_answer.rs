//! What is known of the bow, as JSON.

use quarterturn_tuning::BowReport;
use serde::Serialize;

use super::matrix::{covariance, pair};
use super::response_answer::ResponseAnswer;

/// The bow as it stands.
#[derive(Serialize)]
pub struct BowAnswer {
    offset_mm: [f64; 2],
    cov_mm2: [[f64; 2]; 2],
    wanted_shift_mm: [f64; 2],
    expected_within_now: f64,
    expected_within_if_moved: f64,
    of_shafts: usize,
    #[serde(skip_serializing_if = "Option::is_none")]
    response: Option<ResponseAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    propose_move_mm: Option<[f64; 2]>,
}

impl From<&BowReport> for BowAnswer {
    fn from(bow: &BowReport) -> Self {
        Self {
            offset_mm: pair(bow.offset.mean),
            cov_mm2: covariance(&bow.offset),
            wanted_shift_mm: pair(bow.wanted_shift),
            expected_within_now: bow.expected_within_now,
            expected_within_if_moved: bow.expected_within_if_moved,
            of_shafts: bow.shafts,
            response: bow.response.as_ref().map(ResponseAnswer::from),
            propose_move_mm: bow.proposed_move.map(pair),
        }
    }
}
