//! Every bare shot in a row of the report.

use crate::plot::{HitKind, HitMark, Hits};
use crate::wording::{Ruler, mark, tail};

/// One bare shot.
pub struct ShotRow {
    /// Whose it was.
    pub shaft: String,
    /// Where its mark stood.
    pub mark: String,
    /// Where it hit, from the reference.
    pub hit: String,
    /// Where its tail pointed.
    pub tail: String,
    /// Whether it speaks for its shaft.
    pub counts: &'static str,
}

/// The bare shots that can be drawn, in the order they were shot.
pub fn rows(hits: &Hits, ruler: Ruler) -> Vec<ShotRow> {
    hits.marks.iter().map(|hit| ShotRow::of(hit, ruler)).collect()
}

impl ShotRow {
    fn of(hit: &HitMark, ruler: Ruler) -> Self {
        Self {
            shaft: hit.shaft.to_string(),
            mark: mark(hit.index),
            hit: ruler.miss_bare(hit.at),
            tail: tail(hit.tail).trim_start_matches("tail ").to_owned(),
            counts: match hit.kind {
                HitKind::Judged => "here",
                HitKind::Other => "elsewhere",
                HitKind::LeftOut => "left out",
            },
        }
    }
}
