//! The answer of `repair`.

use std::borrow::Cow;

use quarterturn_journal::Repair;
use serde::Serialize;

use super::finding_answer::FindingAnswer;
use crate::failure::Failure;

#[derive(Serialize)]
struct RepairAnswer<'a> {
    schema: &'static str,
    done: &'static str,
    records: u64,
    lost: &'a [u64],
    findings: Vec<FindingAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    torn_bytes: Option<u64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    original: Option<Cow<'a, str>>,
}

/// What was done about a journal, or would be, as JSON.
pub fn repaired(repair: &Repair, dry_run: bool) -> Result<String, Failure> {
    let whole = repair.findings.is_empty();
    super::line(&RepairAnswer {
        schema: "quarterturn.repair/1",
        done: match (whole, dry_run) {
            (true, _) => "nothing",
            (false, true) => "planned",
            (false, false) => "mended",
        },
        records: repair.kept,
        lost: &repair.lost,
        findings: repair.findings.iter().map(FindingAnswer::from).collect(),
        torn_bytes: repair.torn.map(|torn| torn.bytes),
        original: (!whole).then(|| repair.original.to_string_lossy()),
    })
}
