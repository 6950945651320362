//! Where a shaft landed as built and where it lands now, in a row of the report.

use crate::plot::{HitMark, Landing};
use crate::wording::{Ruler, mark};

/// One bare shaft.
pub struct TurnedRow {
    /// Its name.
    pub shaft: String,
    /// Where its mark stood as built.
    pub built: String,
    /// Its first hit there.
    pub first: String,
    /// Where the mark of its verdict stands.
    pub judged: String,
    /// Its last hit there.
    pub last: String,
    /// Where it lands there on average.
    pub now: String,
}

impl TurnedRow {
    /// The row of a shaft.
    pub fn of(landing: &Landing, ruler: Ruler) -> Self {
        let hit = |hit: Option<&HitMark>| {
            hit.map_or("not shot".to_owned(), |hit| ruler.miss_bare(hit.at))
        };
        Self {
            shaft: landing.report.shaft.to_string(),
            built: mark(landing.as_built),
            first: hit(landing.first),
            judged: mark(landing.report.index),
            last: hit(landing.last),
            now: landing.now.map_or("not known".to_owned(), |now| ruler.miss_bare(now)),
        }
    }
}
