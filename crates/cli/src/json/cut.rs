//! What comes off which end, as JSON.

use quarterturn_bench::Trim;
use quarterturn_geometry::Millimetres;
use quarterturn_tuning::ShaftName;
use serde::Serialize;

use crate::failure::Failure;
use crate::wording;
use crate::workshop::{CutList, Gate, Planned};

#[derive(Serialize)]
struct CutAnswer<'a> {
    schema: &'static str,
    target_mm: f64,
    kerf_mm: f64,
    squaring_mm: f64,
    cut: Vec<CutShaft<'a>>,
    cut_already: Vec<&'a str>,
    too_short: Vec<&'a str>,
    length_not_known: Vec<&'a str>,
    gate: &'static str,
    gate_shafts: Vec<&'a str>,
    cautions: [&'static str; 1],
}

#[derive(Serialize)]
struct CutShaft<'a> {
    shaft: &'a str,
    length_mm: f64,
    ends_measured: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    point: Option<TrimAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    nock: Option<TrimAnswer>,
}

#[derive(Serialize)]
struct TrimAnswer {
    off_mm: f64,
    #[serde(skip_serializing_if = "Option::is_none")]
    stop_mm: Option<f64>,
}

/// The list.
pub fn cut(list: &CutList) -> Result<String, Failure> {
    let (gate, gate_shafts) = match &list.gate {
        Gate::CutOne => ("cut one", names(&[])),
        Gate::ShootIt(cut) => ("shoot it", names(cut)),
        Gate::CutTheRest(shot) => ("cut the rest", names(shot)),
    };
    super::finite_line(&CutAnswer {
        schema: "quarterturn.cut/1",
        target_mm: list.target.mm(),
        kerf_mm: list.saw.kerf.mm(),
        squaring_mm: list.saw.squaring.mm(),
        cut: list.planned.iter().map(shaft).collect(),
        cut_already: names(&list.done),
        too_short: list.too_short.iter().map(|(name, _)| name.as_str()).collect(),
        length_not_known: names(&list.unmeasured),
        gate,
        gate_shafts,
        cautions: [wording::CUTTING],
    })
}

fn names(names: &[ShaftName]) -> Vec<&str> {
    names.iter().map(ShaftName::as_str).collect()
}

fn shaft(planned: &Planned) -> CutShaft<'_> {
    let trim =
        |trim: Trim| TrimAnswer { off_mm: trim.off.mm(), stop_mm: trim.stop.map(Millimetres::mm) };
    CutShaft {
        shaft: planned.shaft.as_str(),
        length_mm: planned.length.mm(),
        ends_measured: planned.ends_known,
        point: planned.plan.point.map(trim),
        nock: planned.plan.nock.map(trim),
    }
}
