//! The echo of measures that were recorded, and what has to be said beside them.

use quarterturn_bench::FEWEST_READINGS;
use quarterturn_journal::{BenchMeasures, Word};
use quarterturn_tuning::{ShaftState, Standing, Verdict};

use crate::opened::Opened;
use crate::wording::{self, command};
use crate::workshop::{Workshop, unit_slip};

/// Measures of a shaft were recorded.
pub fn recorded_bench(opened: &Opened, shaft: &str) -> String {
    format!("Recorded: what was measured of {shaft}.\n\nThen: {}\n", command("bench", &opened.path))
}

/// What has to be said beside measures that were recorded; nothing is refused for it.
pub fn beside_the_measures(opened: &Opened, shaft: &str, measures: &BenchMeasures) -> Vec<String> {
    let state = opened.journal.state();
    let roster = state.roster();
    let mut all = roster.shafts.iter().chain(&roster.references);
    let Some(standing) = all.find(|standing| standing.name.as_str() == shaft) else {
        return Vec::new();
    };
    let gone = out_of_use(standing).or_else(|| retired(opened, standing));
    let few = too_few_readings(shaft, measures);
    let slips = unit_slip(&Workshop::of(state), &standing.name, measures);
    gone.into_iter().chain(few).chain(slips).collect()
}

/// That the shaft was retired by its shots.
fn retired(opened: &Opened, standing: &Standing) -> Option<String> {
    let name = &standing.name;
    let reports = opened.advice().shafts;
    let Verdict::Retire(reason) = reports.iter().find(|report| report.shaft == *name)?.verdict
    else {
        return None;
    };
    let reason = wording::retire_reason(reason);
    Some(format!(
        "{name} was retired by its shots ({reason}): its measures are kept; once it is mended, record it as repaired"
    ))
}

/// That a stiff side takes more readings.
fn too_few_readings(shaft: &str, measures: &BenchMeasures) -> Option<String> {
    let n = measures.spine.len();
    (1..FEWEST_READINGS).contains(&n).then(|| {
        format!(
            "{} around {shaft} {} no stiff side: {FEWEST_READINGS} or more do, a quarter turn apart or less",
            wording::count(n, "reading"),
            if n == 1 { "names" } else { "name" }
        )
    })
}

/// That the shaft which was measured is not to be shot.
fn out_of_use(standing: &Standing) -> Option<String> {
    let shaft = &standing.name;
    (!matches!(standing.state, ShaftState::InUse | ShaftState::Fletched)).then(|| {
        format!(
            "{shaft} is recorded as {}: its measures are kept all the same",
            standing.state.word()
        )
    })
}
