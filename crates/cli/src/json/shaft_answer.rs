//! What is known of one bare shaft, as JSON.

use quarterturn_tuning::{Prediction, ShaftReport};
use serde::Serialize;

use super::matrix::{covariance, pair};
use crate::wording::{self, Ruler};

/// What `next` says of a shaft.
#[derive(Serialize)]
pub struct ShaftAnswer<'a> {
    shaft: &'a str,
    verdict: &'static str,
    index_deg: f64,
    index_now_deg: f64,
    within: f64,
    shots_here: usize,
    shots_total: usize,
    shots_left_out: usize,
    nock_turns: usize,
    nock_turns_left: usize,
    miss_mm: [f64; 2],
    miss_cov_mm2: [[f64; 2]; 2],
    reason: String,
}

impl<'a> ShaftAnswer<'a> {
    /// The report of a shaft; lengths in its reason as `ruler` says them.
    pub fn new(report: &'a ShaftReport, ruler: Ruler) -> Self {
        Self {
            shaft: report.shaft.as_str(),
            verdict: wording::verdict(report.verdict),
            index_deg: report.index.degrees(),
            index_now_deg: report.index_now.degrees(),
            within: report.within,
            shots_here: report.shots_here,
            shots_total: report.shots_total,
            shots_left_out: report.shots_left_out,
            nock_turns: report.turns,
            nock_turns_left: report.turns_left,
            miss_mm: pair(report.miss.mean),
            miss_cov_mm2: covariance(&report.miss),
            reason: wording::reason(report, ruler),
        }
    }
}

/// What is predicted with the mark at one position.
#[derive(Serialize)]
pub struct PositionAnswer {
    index_deg: f64,
    within: f64,
    miss_mm: [f64; 2],
    miss_cov_mm2: [[f64; 2]; 2],
}

impl From<&Prediction> for PositionAnswer {
    fn from(prediction: &Prediction) -> Self {
        Self {
            index_deg: prediction.index.degrees(),
            within: prediction.within,
            miss_mm: pair(prediction.miss.mean),
            miss_cov_mm2: covariance(&prediction.miss),
        }
    }
}
