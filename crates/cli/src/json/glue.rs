//! What was glued, as JSON.

use jiff::Timestamp;
use serde::Serialize;

use crate::curing::Gluing;
use crate::failure::Failure;
use crate::wording;

#[derive(Serialize)]
struct GluedAnswer<'a> {
    schema: &'static str,
    glued: Vec<GluingAnswer<'a>>,
    cautions: Vec<&'static str>,
}

#[derive(Serialize)]
struct GluingAnswer<'a> {
    shafts: &'a [String],
    part: &'a str,
    at: &'a str,
    cure_h: f64,
    not_before: String,
    cured: bool,
}

/// Everything that was glued, in the order in which it was entered.
pub fn glued<'a>(glued: &'a [Gluing<'_>], now: Timestamp) -> Result<String, Failure> {
    let answer = |gluing: &'a Gluing<'_>| GluingAnswer {
        shafts: &gluing.entry.shafts,
        part: &gluing.entry.part,
        at: gluing.entry.at.as_deref().unwrap_or_default(),
        cure_h: gluing.entry.cure_h,
        not_before: gluing.ready.strftime("%Y-%m-%dT%H:%M:%S%:z").to_string(),
        cured: !gluing.cures(now),
    };
    super::finite_line(&GluedAnswer {
        schema: "quarterturn.glued/1",
        glued: glued.iter().map(answer).collect(),
        cautions: wording::INSERTS.into_iter().chain(wording::GLUE).collect(),
    })
}
