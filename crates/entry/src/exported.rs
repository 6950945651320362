//! An export as JSON, read back.

use std::ops::Range;

use quarterturn_journal::{Entry, RecordId, Timestamp};
use serde::Deserialize;
use serde_json::value::RawValue;

use crate::Located;
use crate::incoming::{Incoming, Read, identified};
use crate::table::TableFault;

/// The schema that is read.
const SCHEMA: &str = "quarterturn.export/1";

#[derive(Deserialize)]
struct Export<'a> {
    schema: String,
    #[serde(borrow)]
    records: Vec<&'a RawValue>,
}

#[derive(Deserialize)]
struct Exported<'a> {
    record: u64,
    record_id: RecordId,
    recorded_at: Timestamp,
    kind: String,
    #[serde(borrow)]
    data: &'a RawValue,
}

/// Reads what `export --json` wrote.
///
/// # Errors
/// Where the text is not JSON or no export; else every record that cannot be read, each where it stands.
pub fn exported(text: &str) -> Result<Vec<Incoming>, Vec<Located<TableFault>>> {
    let export: Export =
        serde_json::from_str(text).map_err(|error| vec![no_export(text, &error)])?;
    if export.schema != SCHEMA {
        let reason = format!("its schema is not {SCHEMA}");
        return Err(vec![Located::new(TableFault::NoExport { reason }, 0..0)]);
    }
    let (mut read, mut faults) = (Vec::new(), Vec::new());
    for piece in export.records {
        match record(text, piece) {
            Ok(record) => read.push(record),
            Err(fault) => faults.push(fault),
        }
    }
    if faults.is_empty() { Ok(identified(read)) } else { Err(faults) }
}

fn record(text: &str, piece: &RawValue) -> Result<Read, Located<TableFault>> {
    let whole = place(text, piece.get());
    let one: Exported = serde_json::from_str(piece.get()).map_err(|error| {
        Located::new(TableFault::Data { reason: reason(&error) }, whole.clone())
    })?;
    let data = place(text, one.data.get());
    let entry = Entry::read(&one.kind, one.data.get())
        .map_err(|damage| Located::new(TableFault::data(&damage), data))?;
    Ok(Read {
        seq: Some(one.record),
        id: Some(one.record_id),
        time: Some(one.recorded_at),
        entry,
        whole,
        complete: true,
        cells: Vec::new(),
    })
}

/// The bytes of `text` at which `piece`, which is borrowed from it, stands.
fn place(text: &str, piece: &str) -> Range<usize> {
    let start = piece.as_ptr().addr() - text.as_ptr().addr();
    start..start + piece.len()
}

/// What the reader of JSON says, without the place, which is shown.
fn reason(error: &serde_json::Error) -> String {
    let said = error.to_string();
    said.rsplit_once(" at line ").map_or(said.as_str(), |(reason, _)| reason).to_owned()
}

/// Where the reader of JSON gave up.
fn no_export(text: &str, error: &serde_json::Error) -> Located<TableFault> {
    let before = text.split_inclusive('\n').take(error.line().saturating_sub(1)).map(str::len);
    let byte = before.sum::<usize>() + error.column().saturating_sub(1);
    let at = text.char_indices().map(|(at, _)| at).take_while(|at| *at <= byte).last();
    let at = at.unwrap_or_default();
    let end = text.get(at..).and_then(|rest| rest.chars().next()).map_or(at, |c| at + c.len_utf8());
    Located::new(TableFault::NoExport { reason: reason(error) }, at..end)
}
