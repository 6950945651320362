//! The figures as JSON: values, intervals at 95 %, and how many cases they rest on.

use quarterturn_statistics::Estimate;
use quarterturn_tuning::Figures;
use serde_json::{Value, json};

use crate::Row;
use crate::options::Options;

/// All rows, with what they were played with.
pub fn json(rows: &[Row], options: &Options) -> Result<String, serde_json::Error> {
    let rows: Vec<Value> = rows.iter().map(row).collect();
    let all =
        json!({ "dozens": options.dozens, "seed": options.seed, "level": 0.95, "rows": rows });
    Ok(serde_json::to_string_pretty(&all)? + "\n")
}

fn row(Row { world, protocol, figures }: &Row) -> Value {
    let Figures { dozens, shots_per_shaft, ends, turns_per_shaft, wrong, lost, open, .. } = figures;
    let bins = figures.bins.iter().map(|bin| json!({ "said": bin.said, "true": known(&bin.held) }));
    json!({
        "world": world,
        "protocol": protocol,
        "dozens": dozens,
        "shots_per_shaft": shots_per_shaft.as_ref().map(known),
        "ends": ends.as_ref().map(known),
        "turns_per_shaft": turns_per_shaft.as_ref().map(known),
        "wrong": wrong.as_ref().map(known),
        "lost": lost.as_ref().map(known),
        "open": open.as_ref().map(known),
        "bow_asked": figures.bow.as_ref().map(known),
        "bow_asked_early": figures.bow_early.as_ref().map(known),
        "bow_asked_falsely": figures.bow_false.as_ref().map(known),
        "regions_90": figures.covered.as_ref().map(known),
        "within": bins.collect::<Vec<_>>(),
    })
}

fn known(estimate: &Estimate) -> Value {
    let Estimate { value, interval, n, .. } = estimate;
    json!({ "value": value, "from": interval.lower, "to": interval.upper, "n": n })
}
