//! What was found wrong with a journal, as JSON.

use quarterturn_journal::Finding;
use serde::Serialize;

/// One thing that is wrong.
#[derive(Serialize)]
pub struct FindingAnswer {
    kind: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    line: Option<u64>,
    #[serde(skip_serializing_if = "Option::is_none")]
    record: Option<u64>,
    text: String,
}

impl From<&Finding> for FindingAnswer {
    fn from(finding: &Finding) -> Self {
        let (kind, line, record) = match *finding {
            Finding::Damaged { line, .. } => ("damaged", Some(line), None),
            Finding::Missing { from, .. } => ("missing", None, Some(from)),
            Finding::LeftOver { line, record } => ("left-over", Some(line), Some(record)),
            Finding::Moved { line, record } => ("moved", Some(line), Some(record)),
            Finding::Unlinked { line, record } => ("unlinked", Some(line), Some(record)),
            _ => ("other", None, None),
        };
        Self { kind, line, record, text: finding.to_string() }
    }
}
