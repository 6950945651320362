//! A doubtful shot on which a verdict hangs, as JSON.

use quarterturn_tuning::{Doubt, Without};
use serde::Serialize;

use super::matrix::pair;
use crate::wording::{self, Ruler};

/// A shot, and what would be said without it.
#[derive(Serialize)]
pub struct DoubtAnswer {
    end: usize,
    miss_mm: [f64; 2],
    #[serde(skip_serializing_if = "Option::is_none")]
    verdict: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    index_deg: Option<f64>,
    text: String,
}

impl DoubtAnswer {
    /// The doubt; lengths in its text as `ruler` says them.
    pub fn new(doubt: &Doubt, ruler: Ruler) -> Self {
        let (verdict, index_deg) = match doubt.without {
            Without::Verdict(verdict) => (Some(wording::verdict(verdict)), None),
            Without::Index(index) => (None, Some(index.degrees())),
        };
        let text = wording::doubt(doubt, ruler);
        Self { end: doubt.end, miss_mm: pair(doubt.miss), verdict, index_deg, text }
    }
}
