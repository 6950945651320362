//! What was glued, as JSON.

use jiff::Timestamp;
use serde::Serialize;

use crate::curing::Glueing;
use crate::failure::Failure;
use crate::wording;

#[derive(Serialize)]
struct GluedAnswer<'a> {
    schema: &'static str,
    glued: Vec<GlueingAnswer<'a>>,
    cautions: Vec<&'static str>,
}

#[derive(Serialize)]
struct GlueingAnswer<'a> {
    shafts: &'a [String],
    part: &'a str,
    at: &'a str,
    cure_h: f64,
    not_before: String,
    cured: bool,
}

/// Everything that was glued, in the order in which it was entered.
pub fn glued<'a>(glued: &'a [Glueing<'_>], now: Timestamp) -> Result<String, Failure> {
    let answer = |glueing: &'a Glueing<'_>| GlueingAnswer {
        shafts: &glueing.entry.shafts,
        part: &glueing.entry.part,
        at: glueing.entry.at.as_deref().unwrap_or_default(),
        cure_h: glueing.entry.cure_h,
        not_before: glueing.ready.strftime("%Y-%m-%dT%H:%M:%S%:z").to_string(),
        cured: !glueing.cures(now),
    };
    super::finite_line(&GluedAnswer {
        schema: "quarterturn.glued/1",
        glued: glued.iter().map(answer).collect(),
        cautions: wording::INSERTS.into_iter().chain(wording::GLUE).collect(),
    })
}
