//! Everything there is, as a table.

use quarterturn_journal::{EndEntry, Entry, Record, ShotEntry};

use super::guarded::guarded;
use super::member::NUMBERS;
use crate::{is_hidden, visible, visible_json};

/// The columns before and behind the numbers of a shot.
const BEFORE: [&str; 9] =
    ["record", "record_id", "recorded_at", "kind", "evening", "at", "note", "distance_m", "shaft"];
const BEHIND: [&str; 4] = ["call", "flags", "tail_seen", "data"];

/// The records as a table that [`read`](super::read) reads back: a shot a line, an entry of another kind a line.
///
/// What has no column (an entry of another kind, a member that is not known, a text that is there and empty, or that has
/// control characters) stands as
/// JSON in the column `data`, and is then read from there alone. Text that a spreadsheet would take for a formula has
/// an apostrophe before it, which is taken off again when it is read.
pub fn written(records: &[Record]) -> String {
    let mut writer = csv::Writer::from_writer(Vec::new());
    let head = BEFORE.into_iter().chain(NUMBERS.iter().map(|number| number.name)).chain(BEHIND);
    let rows = records.iter().flat_map(rows);
    let rows = std::iter::once(head.map(str::to_owned).collect()).chain(rows);
    for row in rows {
        // A list takes whatever is written to it.
        let _ = writer.write_record(row);
    }
    String::from_utf8(writer.into_inner().unwrap_or_default()).unwrap_or_default()
}

/// The rows of one record.
fn rows(record: &Record) -> Vec<Vec<String>> {
    let Entry::End(end) = &record.entry else {
        return vec![row(
            record,
            &EndEntry::default(),
            &ShotEntry::default(),
            &data(&record.entry),
        )];
    };
    let whole = if is_told_by_columns(end) { String::new() } else { data(&record.entry) };
    let datas = std::iter::once(whole).chain(std::iter::repeat(String::new()));
    end.shots.iter().zip(datas).map(|(shot, data)| row(record, end, shot, &data)).collect()
}

fn data(entry: &Entry) -> String {
    visible_json(&serde_json::to_string(entry).unwrap_or_default())
}

/// Whether the columns say all of an end, and nothing otherwise than it is.
fn is_told_by_columns(end: &EndEntry) -> bool {
    let told = |text: &Option<String>| {
        let is_told = |text: &String| !text.trim().is_empty() && !text.contains(is_hidden);
        text.as_ref().is_none_or(is_told)
    };
    let plain = |text: &Option<String>| text.as_ref().is_none_or(|text| text.trim() == text);
    let shot = |shot: &ShotEntry| {
        let one_word = |flag: &String| {
            let words = flag.split_whitespace().count();
            words == 1 && flag.trim() == flag && !flag.contains(is_hidden)
        };
        shot.others.is_empty()
            && [&shot.call, &shot.tail_seen].into_iter().all(|text| told(text) && plain(text))
            && shot.flags.iter().all(one_word)
            && !shot.shaft.is_empty()
            && shot.shaft.trim() == shot.shaft
            && !shot.shaft.contains(is_hidden)
    };
    end.others.is_empty()
        && [&end.evening, &end.at, &end.note].into_iter().all(told)
        && !end.shots.is_empty()
        && end.shots.iter().all(shot)
}

fn row(record: &Record, end: &EndEntry, shot: &ShotEntry, data: &str) -> Vec<String> {
    let cell = |text: &str| guarded(&visible(text));
    let text = |text: &Option<String>| text.as_deref().map(cell).unwrap_or_default();
    let mut shot = shot.clone();
    let mut cells = vec![
        record.seq.to_string(),
        record.stamp.id.to_string(),
        record.stamp.time.to_string(),
        record.entry.kind().to_owned(),
        text(&end.evening),
        text(&end.at),
        text(&end.note),
        end.distance_m.map(number).unwrap_or_default(),
        cell(&shot.shaft),
    ];
    cells.extend(NUMBERS.iter().map(|of| of.of(&mut shot).map(number).unwrap_or_default()));
    cells.extend([text(&shot.call), cell(&shot.flags.join(" ")), text(&shot.tail_seen)]);
    cells.push(guarded(data));
    cells
}

/// A number as it is read back to the last bit, without an exponent where it has few digits.
fn number(value: f64) -> String {
    let plain = value == 0.0 || (1e-6..1e15).contains(&value.abs());
    if plain { format!("{value}") } else { format!("{value:e}") }
}
