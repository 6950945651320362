//! Tables: one is read or shown where it is wrong, and what is written is read again bit for bit.
#![no_main]

use libfuzzer_sys::fuzz_target;
use quarterturn_entry::table::{read, written};
use quarterturn_entry::{Advising, Incoming, exported};
use quarterturn_journal::{Record, Stamp, Timestamp};

fuzz_target!(|bytes: &[u8]| {
    let Ok(text) = str::from_utf8(bytes) else { return };
    let read_or_shown = if text.starts_with('{') { exported(text) } else { read(text) };
    let incoming = match read_or_shown {
        Ok(incoming) => incoming,
        Err(faults) => {
            assert!(!faults.is_empty());
            for fault in faults {
                assert!(text.get(fault.span).is_some() && fault.fault.way_on().is_some());
            }
            return;
        }
    };
    let time: Timestamp = "2027-03-02T10:15:00Z".parse().unwrap();
    let record = |(one, seq): (&Incoming, u64)| Record {
        seq,
        stamp: Stamp { id: one.id, time: one.time.clone().unwrap_or_else(|| time.clone()) },
        entry: one.entry.clone(),
    };
    let records: Vec<Record> = incoming.iter().zip(1..).map(record).collect();
    // An end without a shot has no line; the journal refuses it.
    if records.iter().any(|record| is_empty(record)) {
        return;
    }
    let table = written(&records);
    let again = read(&table).unwrap_or_else(|faults| panic!("{faults:?} in {table}"));
    let again: Vec<_> = again.iter().map(|one| (one.id, one.entry.clone())).collect();
    let before: Vec<_> = records.iter().map(|one| (one.stamp.id, one.entry.clone())).collect();
    // An export may say a record twice; read again it is the same twice.
    assert_eq!(again, before, "{table}");
});

fn is_empty(record: &Record) -> bool {
    matches!(&record.entry, quarterturn_journal::Entry::End(end) if end.shots.is_empty())
}
