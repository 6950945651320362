//! Where the vanes go, as JSON.

use quarterturn_geometry::{Index, Millimetres};
use quarterturn_tuning::ShaftReport;
use serde::Serialize;

use crate::args::VaneAngle;
use crate::failure::Failure;
use crate::fletching::{Fletching, Kept};
use crate::opened::Opened;
use crate::wording;

#[derive(Serialize)]
struct FletchAnswer<'a> {
    schema: &'static str,
    vanes: u8,
    cock_deg: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    vane_angle: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    wrap_mm: Option<f64>,
    keep: Vec<KeptAnswer<'a>>,
    open: Vec<Other<'a>>,
    retire: Vec<Other<'a>>,
    fletched: Vec<&'a str>,
    cautions: [&'static str; 3],
}

#[derive(Serialize)]
struct KeptAnswer<'a> {
    shaft: &'a str,
    index_deg: f64,
    vanes_from_mark_deg: Vec<f64>,
}

#[derive(Serialize)]
struct Other<'a> {
    shaft: &'a str,
    reason: String,
}

/// Where the vanes of each kept shaft go, and the others with their reasons.
pub fn fletch(opened: &Opened, fletching: &Fletching<'_>) -> Result<String, Failure> {
    super::finite_line(&FletchAnswer {
        schema: "quarterturn.fletch/1",
        vanes: fletching.asked.vanes.count(),
        cock_deg: fletching.asked.cock.degrees(),
        vane_angle: fletching.asked.angle.map(VaneAngle::word),
        wrap_mm: fletching.asked.wrap.map(Millimetres::mm),
        keep: fletching.kept.iter().map(kept).collect(),
        open: others(opened, &fletching.open),
        retire: others(opened, &fletching.retired),
        fletched: fletching.fletched.iter().map(|report| report.shaft.as_str()).collect(),
        cautions: wording::GLUE,
    })
}

fn kept<'a>(kept: &Kept<'a>) -> KeptAnswer<'a> {
    KeptAnswer {
        shaft: kept.report.shaft.as_str(),
        index_deg: kept.report.index.degrees(),
        vanes_from_mark_deg: kept.from_mark.iter().copied().map(Index::degrees).collect(),
    }
}

fn others<'a>(opened: &Opened, reports: &[&'a ShaftReport]) -> Vec<Other<'a>> {
    let other = |report: &&'a ShaftReport| Other {
        shaft: report.shaft.as_str(),
        reason: wording::reason(report, opened.ruler()),
    };
    reports.iter().map(other).collect()
}
