//! The answer of `rehearse`.

use quarterturn_statistics::Estimate;
use quarterturn_tuning::Leans;
use serde::Serialize;

use crate::failure::Failure;
use crate::rehearsal::{Alternative, Found, Range};

#[derive(Serialize)]
struct RehearsedAnswer {
    schema: &'static str,
    dozens: usize,
    seed: u32,
    cases: Vec<CaseAnswer>,
}

#[derive(Serialize)]
struct CaseAnswer {
    case: &'static str,
    group_mm: f64,
    spread_mm: f64,
    distance_m: f64,
    tolerance_mm: f64,
    shafts: u16,
    arrows_per_end: u16,
    leans: &'static str,
    shots: RangeAnswer,
    ends: RangeAnswer,
    evenings: RangeAnswer,
    #[serde(skip_serializing_if = "Option::is_none")]
    open: Option<ShareAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    wrong: Option<ShareAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    lost: Option<ShareAnswer>,
}

#[derive(Serialize)]
struct RangeAnswer {
    median: usize,
    from: usize,
    to: usize,
    level: f64,
}

#[derive(Serialize)]
struct ShareAnswer {
    share: f64,
    from: f64,
    to: f64,
    level: f64,
    of: usize,
}

/// What was found in every case, as JSON.
pub fn rehearsed(found: &[Found], seed: u32) -> Result<String, Failure> {
    super::finite_line(&RehearsedAnswer {
        schema: "quarterturn.rehearse/1",
        dozens: found.first().map_or(0, |one| one.figures.dozens),
        seed,
        cases: found.iter().map(CaseAnswer::from).collect(),
    })
}

impl From<&Found> for CaseAnswer {
    fn from(found: &Found) -> Self {
        let Found { what, conditions, shots, ends, evenings, figures } = found;
        Self {
            case: match what {
                Alternative::AsAsked => "as asked",
                Alternative::Closer => "closer",
                Alternative::Wider => "wider tolerance",
                Alternative::ReadLeans => "leans read",
            },
            group_mm: conditions.group.mm(),
            spread_mm: conditions.spread().mm(),
            distance_m: conditions.distance.metres(),
            tolerance_mm: conditions.tolerance.mm(),
            shafts: conditions.shafts,
            arrows_per_end: conditions.arrows_per_end,
            leans: match conditions.leans {
                Leans::Read => "read",
                Leans::NotRead => "not read",
            },
            shots: shots.into(),
            ends: ends.into(),
            evenings: evenings.into(),
            open: figures.open.map(ShareAnswer::from),
            wrong: figures.wrong.map(ShareAnswer::from),
            lost: figures.lost.map(ShareAnswer::from),
        }
    }
}

impl From<&Range> for RangeAnswer {
    fn from(&Range { median, from, to }: &Range) -> Self {
        Self { median, from, to, level: 0.9 }
    }
}

impl From<Estimate> for ShareAnswer {
    fn from(Estimate { value, interval, n, .. }: Estimate) -> Self {
        Self {
            share: value,
            from: interval.lower,
            to: interval.upper,
            level: interval.level,
            of: n,
        }
    }
}
