//! What was recorded, as JSON.

use quarterturn_journal::{Confirmed, Entry, NewEntry, Stamp};
use quarterturn_tuning::Event;
use serde::Serialize;

use crate::failure::Failure;
use crate::opened::Opened;
use crate::wording;

#[derive(Serialize)]
struct Recorded<'a, T: Serialize> {
    schema: &'static str,
    seq: u64,
    id: String,
    time: String,
    recorded: &'a T,
    #[serde(skip_serializing_if = "Option::is_none")]
    taken_back: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    cautions: Option<&'static [&'static str]>,
}

/// A record that was appended.
pub fn recorded(confirmed: &Confirmed) -> Result<String, Failure> {
    let record = &confirmed.record;
    super::line(&Recorded::<Entry> {
        schema: match &record.entry {
            Entry::New(_) => NEW,
            Entry::End(_) => "quarterturn.end/1",
            Entry::Bow(_) => "quarterturn.bow/1",
            Entry::Shaft(_) => "quarterturn.shaft/1",
            Entry::Undo(_) => "quarterturn.undo/1",
        },
        seq: record.seq,
        id: record.stamp.id.to_string(),
        time: record.stamp.time.to_string(),
        recorded: &record.entry,
        taken_back: confirmed.taken_back.as_ref().map(kind),
        cautions: None,
    })
}

/// How a journal was begun, with what belongs before the first bare shot.
pub fn begun(opened: &Opened, stamp: &Stamp) -> Result<String, Failure> {
    super::line(&Recorded::<NewEntry> {
        schema: NEW,
        seq: opened.journal.state().records(),
        id: stamp.id.to_string(),
        time: stamp.time.to_string(),
        recorded: opened.journal.state().beginning(),
        taken_back: None,
        cautions: Some(&wording::BEFORE_THE_FIRST_BARE_SHOT),
    })
}

const NEW: &str = "quarterturn.new/1";

/// The command that recorded an event.
const fn kind(event: &Event) -> &'static str {
    match event {
        Event::End(_) => "end",
        Event::Bow(_) | Event::BowLeft => "bow",
        Event::Shaft(..) => "shaft",
    }
}
