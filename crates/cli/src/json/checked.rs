//! The answers of `check`.

use quarterturn_journal::{Checked, Repair};
use serde::Serialize;

use super::finding_answer::FindingAnswer;
use crate::failure::Failure;

#[derive(Serialize)]
struct CheckAnswer<'a> {
    schema: &'static str,
    whole: bool,
    records: u64,
    #[serde(skip_serializing_if = "Option::is_none")]
    bytes: Option<u64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    shots: Option<u64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    standing: Option<usize>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    kinds: Vec<KindAnswer>,
    #[serde(skip_serializing_if = "Option::is_none")]
    last: Option<LastAnswer<'a>>,
    #[serde(skip_serializing_if = "<[u64]>::is_empty")]
    earlier: &'a [u64],
    #[serde(skip_serializing_if = "Option::is_none")]
    torn_bytes: Option<u64>,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    findings: Vec<FindingAnswer>,
    #[serde(skip_serializing_if = "<[u64]>::is_empty")]
    lost: &'a [u64],
}

#[derive(Serialize)]
struct KindAnswer {
    kind: &'static str,
    records: u64,
}

#[derive(Serialize)]
struct LastAnswer<'a> {
    record: u64,
    record_id: String,
    recorded_at: &'a str,
}

/// What was proved of a journal that is whole, as JSON.
pub fn whole(checked: &Checked) -> Result<String, Failure> {
    let kind = |&(kind, records): &(&'static str, u64)| KindAnswer { kind, records };
    super::line(&CheckAnswer {
        schema: "quarterturn.check/1",
        whole: true,
        records: checked.records,
        bytes: Some(checked.bytes),
        shots: Some(checked.shots),
        standing: Some(checked.standing),
        kinds: checked.kinds.iter().map(kind).collect(),
        last: Some(LastAnswer {
            record: checked.records,
            record_id: checked.last.id.to_string(),
            recorded_at: checked.last.time.as_str(),
        }),
        earlier: &checked.earlier,
        torn_bytes: checked.torn.map(|torn| torn.bytes),
        findings: Vec::new(),
        lost: &[],
    })
}

/// What was found in a journal that is not, as JSON.
pub fn damaged(repair: &Repair) -> Result<String, Failure> {
    super::line(&CheckAnswer {
        schema: "quarterturn.check/1",
        whole: false,
        records: repair.kept,
        bytes: None,
        shots: None,
        standing: None,
        kinds: Vec::new(),
        last: None,
        earlier: &[],
        torn_bytes: repair.torn.map(|torn| torn.bytes),
        findings: repair.findings.iter().map(FindingAnswer::from).collect(),
        lost: &repair.lost,
    })
}
