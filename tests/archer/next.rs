//! The answer of `next --json`, as the pinned interface words it.

use serde::Deserialize;

/// What the program answers; members that were added since are let pass.
#[derive(Deserialize)]
pub struct Next {
    pub schema: String,
    pub step: Step,
    pub why: String,
    pub shots: Vec<Asked>,
    pub shafts: Vec<Judged>,
    pub bow: Bow,
}

#[derive(Clone, Copy, Debug, Deserialize, PartialEq)]
#[serde(rename_all = "lowercase")]
pub enum Step {
    Shoot,
    Bow,
    Finished,
}

/// A shot that the program asks for; a reference has no index.
#[derive(Deserialize)]
pub struct Asked {
    pub shaft: String,
    pub index_deg: Option<f64>,
}

/// What the program says of one shaft.
#[derive(Deserialize)]
pub struct Judged {
    pub shaft: String,
    pub verdict: Verdict,
    pub index_deg: f64,
    pub within: f64,
    pub shots_total: usize,
    pub miss_mm: [f64; 2],
    pub miss_cov_mm2: [[f64; 2]; 2],
    pub reason: String,
}

#[derive(Clone, Copy, Debug, Deserialize, PartialEq)]
#[serde(rename_all = "lowercase")]
pub enum Verdict {
    Keep,
    Open,
    Retire,
}

#[derive(Deserialize)]
pub struct Bow {
    pub wanted_shift_mm: [f64; 2],
}
