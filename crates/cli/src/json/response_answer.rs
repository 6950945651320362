//! What moving a part of the bow does, as JSON.

use quarterturn_journal::Word;
use quarterturn_tuning::{Along, Response};
use serde::Serialize;

use super::matrix::pair;

/// What was learned from the measured moves of one part.
#[derive(Serialize)]
pub struct ResponseAnswer {
    part: &'static str,
    moves: usize,
    along: Vec<AlongAnswer>,
    shots_before: usize,
    shots_after: usize,
}

/// What a millimetre in one direction does.
#[derive(Serialize)]
struct AlongAnswer {
    direction: [f64; 2],
    mm_per_mm: [f64; 2],
    intervals_mm_per_mm: [[f64; 2]; 2],
    level: f64,
}

impl From<&Response> for ResponseAnswer {
    fn from(response: &Response) -> Self {
        Self {
            part: response.part.word(),
            moves: response.moves,
            along: response.along.iter().map(AlongAnswer::from).collect(),
            shots_before: response.shots_before,
            shots_after: response.shots_after,
        }
    }
}

impl From<&Along> for AlongAnswer {
    fn from(along: &Along) -> Self {
        let intervals = along.intervals();
        Self {
            direction: pair(along.direction),
            mm_per_mm: pair(along.mm_per_mm),
            intervals_mm_per_mm: intervals.map(|one| [one.lower, one.upper]),
            level: intervals[0].level,
        }
    }
}
