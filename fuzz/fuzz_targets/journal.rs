//! Any bytes as a journal: it is read or refused, what is damaged is mended or refused, and what was mended is whole.
//!
//! An input that begins with `r` is taken as it is. Any other is made into records first, each line with its place in
//! the chain and its checksum, so that what lies behind these is reached too.
#![no_main]

#[allow(dead_code, unused_imports, reason = "here the disk only has to hold files")]
#[path = "../../crates/journal/tests/journal/simulated/mod.rs"]
mod simulated;

use std::path::Path;

use libfuzzer_sys::fuzz_target;
use quarterturn_journal::{Journal, JournalError, RecordId, Repair, Stamp};
use simulated::SimulatedDisk;

fuzz_target!(|input: &[u8]| {
    let bytes = match input {
        [b'r', rest @ ..] => rest.to_vec(),
        lines => chained(lines),
    };
    let (disk, path) = (SimulatedDisk::new(0), Path::new("journal"));
    disk.put(path, &bytes);
    match Journal::open_on(disk.clone(), path) {
        Ok(journal) => drop(journal.state().roster()),
        Err(JournalError::Damaged { .. }) => mend(&disk, path),
        Err(_) => {}
    }
});

fn mend(disk: &SimulatedDisk, path: &Path) {
    let time = "2027-03-02T10:15:00Z".parse().expect("a time");
    let stamp = Stamp { id: RecordId::from_bits(1), time };
    match Repair::carry_out_on(disk, path, &stamp) {
        Ok(repair) => {
            assert!(!repair.findings.is_empty(), "a damaged journal has something to mend");
            let journal = Journal::open_on(disk.clone(), path).expect("what was mended is whole");
            assert_eq!(journal.state().records(), repair.kept + repair.lost.len() as u64);
        }
        Err(JournalError::NoBeginning { .. } | JournalError::Newer { .. }) => {}
        Err(error) => panic!("{error}"),
    }
}

fn chained(lines: &[u8]) -> Vec<u8> {
    let mut journal = Vec::new();
    let mut prev = 0;
    for (seq, line) in (1..).zip(lines.split(|byte| *byte == b'\n')) {
        let start = journal.len();
        let head = format!(
            "{{\"v\":1,\"seq\":{seq},\"id\":\"{seq:016x}\",\"t\":\"2027-03-02T10:15:00Z\",\"kind\":\""
        );
        journal.extend_from_slice(head.as_bytes());
        journal.extend_from_slice(line);
        journal.extend_from_slice(format!(",\"prev\":\"{prev:08x}\"").as_bytes());
        let crc = crc32fast::hash(&journal[start..]);
        journal.extend_from_slice(format!(",\"crc\":\"{crc:08x}\"}}").as_bytes());
        prev = crc32fast::hash(&journal[start..]);
        journal.push(b'\n');
    }
    journal
}
