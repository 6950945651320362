//! Cuts, flipped bits and moved lines of longer journals, in numbers that the environment can raise.

use std::path::Path;

use quarterturn_journal::{Journal, JournalError};

use crate::scene::{beginning, long, stamp, text, times};
use crate::simulated::{Chance, SimulatedDisk};

const PATH: &str = "dozen.jsonl";

/// What is read of a journal of these bytes: its whole records and the bytes after them, or the damaged line.
fn read(bytes: &[u8]) -> Result<(u64, u64), u64> {
    let disk = SimulatedDisk::new(0);
    disk.put(Path::new(PATH), bytes);
    match Journal::open_on(disk, Path::new(PATH)) {
        Ok(read) => Ok((read.state().records(), read.torn().map_or(0, |torn| torn.bytes))),
        Err(JournalError::Damaged { line, .. }) => Err(line),
        Err(JournalError::NotBegun { .. }) => Ok((0, bytes.len() as u64)),
        Err(error) => panic!("{error}"),
    }
}

#[test]
fn every_cut_leaves_the_records_before_it() {
    let records = times("QUARTERTURN_CUT_RECORDS", 100);
    let step = if records > 100 { 1 } else { 7 };
    let whole = text(&long(records as u64));
    let mut ends = vec![0];
    ends.extend((1..).zip(&whole).filter(|(_, byte)| **byte == b'\n').map(|(end, _)| end));
    for length in (0..whole.len()).step_by(step) {
        let records = ends.partition_point(|end| *end <= length) - 1;
        let expected = Ok((records as u64, (length - ends[records]) as u64));
        assert_eq!(read(&whole[..length]), expected, "{length} bytes");
    }
}

#[test]
fn every_flipped_bit_is_noticed() {
    let whole = text(&long(times("QUARTERTURN_FLIP_RECORDS", 20) as u64));
    let all = whole.len() * 8;
    let step = if all > 100_000 { 1 } else { 5 };
    for bit in (0..all).step_by(step) {
        let mut flipped = whole.clone();
        flipped[bit / 8] ^= 1 << (bit % 8);
        assert!(read(&flipped).map_or(true, |(_, torn)| torn > 0), "bit {bit}");
    }
}

#[test]
fn overwritten_bytes_are_noticed() {
    let lines = long(20);
    let whole = text(&lines);
    let mut chance = Chance::of(7);
    for round in 0..times("QUARTERTURN_BURSTS", 5000) {
        let mut damaged = whole.clone();
        let length = 1 + chance.below(32);
        let start = chance.below(whole.len() - length);
        for byte in &mut damaged[start..start + length] {
            *byte = chance.bits().to_le_bytes()[0];
        }
        let noticed = read(&damaged).map_or(true, |(_, torn)| torn > 0);
        assert!(noticed || damaged == whole, "round {round}: {length} bytes at {start}");
    }
}

#[test]
fn moved_lines_are_named() {
    let lines = long(60);
    let mut other = vec![lines[0].replace("0000000000000001", "0000000000000002")];
    other.extend(long(60).into_iter().skip(1));
    let mut chance = Chance::of(11);
    for _ in 0..times("QUARTERTURN_SURGERY", 50) {
        let at = 1 + chance.below(lines.len() - 2);
        let line = at as u64 + 1;
        let mut deleted = lines.clone();
        deleted.remove(at);
        assert_eq!(read(&text(&deleted)), Err(line));
        let mut doubled = lines.clone();
        doubled.insert(at, lines[at].clone());
        assert_eq!(read(&text(&doubled)), Err(line + 1));
        let mut swapped = lines.clone();
        swapped.swap(at, at + 1);
        assert_eq!(read(&text(&swapped)), Err(line));
        let mut inserted = lines.clone();
        inserted.insert(at, foreign(line));
        assert_eq!(read(&text(&inserted)), Err(line), "of another journal, at line {line}");
    }
}

/// A record with this number, whole by itself, of another journal.
fn foreign(seq: u64) -> String {
    let disk = SimulatedDisk::new(3);
    let mut journal =
        Journal::create_on(disk.clone(), Path::new(PATH), beginning(), &stamp(99)).unwrap();
    for id in 1..seq {
        journal.append(crate::scene::shaft("2", "repaired"), &stamp(id)).unwrap();
    }
    let bytes = disk.bytes(Path::new(PATH)).unwrap();
    String::from_utf8(bytes).unwrap().lines().last().unwrap().to_owned()
}
