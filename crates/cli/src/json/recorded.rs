//! What was recorded, as JSON.

use quarterturn_journal::{Confirmed, Deed, Entry, Stamp};
use quarterturn_tuning::Event;
use serde::Serialize;
use serde_json::{Map, Value};

use crate::failure::Failure;
use crate::opened::Opened;
use crate::wording;

/// What was recorded, in the names of the journal, behind what is said of every record.
#[derive(Serialize)]
struct Recorded {
    schema: &'static str,
    record: u64,
    record_id: String,
    #[serde(rename = "recorded_at")]
    time: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    taken_back: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    brought_back: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    cautions: Option<&'static [&'static str]>,
    #[serde(flatten)]
    data: Map<String, Value>,
}

/// The names that data may not have a second time.
const OWN_NAMES: [&str; 7] =
    ["schema", "record", "record_id", "recorded_at", "taken_back", "brought_back", "cautions"];

/// A record that was appended.
pub fn recorded(confirmed: &Confirmed) -> Result<String, Failure> {
    let record = &confirmed.record;
    let recalled = confirmed.recalled.as_ref().map(kind);
    let (taken_back, brought_back) = match record.entry {
        Entry::Redo(_) => (None, recalled),
        _ => (recalled, None),
    };
    super::line(&Recorded {
        taken_back,
        brought_back,
        ..Recorded::new(&record.entry, record.seq, &record.stamp)?
    })
}

/// How a journal was begun, with what belongs before the first bare shot.
pub fn begun(opened: &Opened, stamp: &Stamp) -> Result<String, Failure> {
    let state = opened.journal.state();
    let entry = Entry::New(state.beginning().clone());
    super::line(&Recorded {
        cautions: Some(&wording::BEFORE_THE_FIRST_BARE_SHOT),
        ..Recorded::new(&entry, state.records(), stamp)?
    })
}

impl Recorded {
    fn new(entry: &Entry, record: u64, stamp: &Stamp) -> Result<Self, Failure> {
        let data = serde_json::to_value(entry).map_err(|error| super::failed(&error.to_string()));
        let Value::Object(mut data) = data? else { return Err(super::failed("no members")) };
        data.retain(|name, _| !OWN_NAMES.contains(&name.as_str()));
        Ok(Self {
            schema: match entry {
                Entry::New(_) => "quarterturn.new/1",
                Entry::End(_) => "quarterturn.end/1",
                Entry::Bow(_) => "quarterturn.bow/1",
                Entry::Shaft(_) => "quarterturn.shaft/1",
                Entry::Add(_) => "quarterturn.add/1",
                Entry::Fix(_) => "quarterturn.fix/1",
                Entry::Bench(_) => "quarterturn.bench/1",
                Entry::Glue(_) => "quarterturn.glue/1",
                Entry::Group(_) => "quarterturn.group/1",
                Entry::Quiver(_) => "quarterturn.quiver-entry/1",
                Entry::Note(_) => "quarterturn.note/1",
                Entry::Undo(_) => "quarterturn.undo/1",
                Entry::Unreadable(_) => "quarterturn.repair/1",
                Entry::Redo(_) => "quarterturn.redo/1",
            },
            record,
            record_id: stamp.id.to_string(),
            time: stamp.time.to_string(),
            taken_back: None,
            brought_back: None,
            cautions: None,
            data,
        })
    }
}

/// The command that recorded what was taken or brought back.
const fn kind(deed: &Deed) -> &'static str {
    match deed {
        Deed::Added(Event::End(_)) => "end",
        Deed::Added(Event::Bow(_) | Event::BowLeft) => "bow",
        Deed::Added(Event::Shaft(..) | Event::Fletched(..)) => "shaft",
        Deed::Corrected { .. } => "fix",
        Deed::Joined(_) => "add",
        Deed::Measured(_) => "bench",
        Deed::Glued(_) => "glue",
        Deed::Grouped { .. } => "group",
        Deed::Quivered => "quiver",
        Deed::Noted => "note",
    }
}
