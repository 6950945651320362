//! Every record, as JSON: with what became of it, or to be imported again.

use quarterturn_journal::{Entry, Fate, Log, Record};
use serde::Serialize;

use crate::failure::Failure;

#[derive(Serialize)]
struct LogAnswer<'a> {
    schema: &'static str,
    records: Vec<Logged<'a>>,
}

/// A record, in the names of the answers of the commands that write.
#[derive(Serialize)]
struct Logged<'a> {
    record: u64,
    record_id: String,
    recorded_at: String,
    kind: &'static str,
    #[serde(skip_serializing_if = "Option::is_none")]
    fate: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    by: Option<u64>,
    data: &'a Entry,
}

/// The log of `log --json`.
pub fn log(log: &Log) -> Result<String, Failure> {
    let records = log.records.iter().map(|(record, fate)| {
        let (fate, by) = match *fate {
            Fate::Stands => ("stands", None),
            Fate::Corrected { by } => ("corrected", Some(by)),
            Fate::TakenBack { by } => ("taken back", Some(by)),
        };
        Logged { fate: Some(fate), by, ..Logged::from(record) }
    });
    super::line(&LogAnswer { schema: "quarterturn.log/1", records: records.collect() })
}

/// Everything, as `export --json` writes it and `import` reads it.
pub fn export(records: &[Record]) -> Result<String, Failure> {
    let records = records.iter().map(Logged::from).collect();
    super::line(&LogAnswer { schema: "quarterturn.export/1", records })
}

impl<'a> From<&'a Record> for Logged<'a> {
    fn from(record: &'a Record) -> Self {
        Self {
            record: record.seq,
            record_id: record.stamp.id.to_string(),
            recorded_at: record.stamp.time.to_string(),
            kind: record.entry.kind(),
            fate: None,
            by: None,
            data: &record.entry,
        }
    }
}
