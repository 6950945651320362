//! Where a journal stands, as JSON.

use quarterturn_tuning::ShaftName;
use serde::Serialize;
use serde_json::{Map, Value};

use crate::checklist::{Checklist, Inspection, Stage};
use crate::failure::Failure;
use crate::wording;

#[derive(Serialize)]
struct ChecklistAnswer<'a> {
    schema: &'static str,
    stages: Vec<StageAnswer<'a>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    now: Option<&'static str>,
    inspect: Vec<InspectionAnswer<'a>>,
    cautions: Vec<&'static str>,
}

#[derive(Serialize)]
struct StageAnswer<'a> {
    stage: &'static str,
    stands: &'static str,
    missing: Vec<&'a str>,
    text: String,
}

#[derive(Serialize)]
struct InspectionAnswer<'a> {
    shaft: &'a str,
    reason: &'static str,
    look: &'static [&'static str],
    measured: Map<String, Value>,
}

/// Every stage, and what to look at.
pub fn checklist(checklist: &Checklist) -> Result<String, Failure> {
    super::finite_line(&ChecklistAnswer {
        schema: "quarterturn.checklist/1",
        stages: checklist.stages.iter().map(stage).collect(),
        now: checklist.now().map(|(_, stage)| stage.word),
        inspect: checklist.inspections.iter().map(inspection).collect(),
        cautions: checklist.cautions(),
    })
}

fn stage(stage: &Stage) -> StageAnswer<'_> {
    let said = if stage.said.is_empty() { String::new() } else { format!(": {}", stage.said) };
    StageAnswer {
        stage: stage.word,
        stands: stage.stands.word(),
        missing: stage.missing.iter().map(ShaftName::as_str).collect(),
        text: format!("{}{said}", stage.what),
    }
}

fn inspection(inspection: &Inspection) -> InspectionAnswer<'_> {
    let measured = inspection.measured.iter();
    InspectionAnswer {
        shaft: inspection.shaft.as_str(),
        reason: wording::retire_reason(inspection.reason),
        look: inspection.look,
        measured: measured
            .map(|told| (told.gauge.said().member.to_owned(), told.value.into()))
            .collect(),
    }
}
