//! What is added to a long journal is judged by its end, and comes out as if all of it had been read.

use std::path::Path;

use quarterturn_journal::{BowEntry, Entry, Journal, JournalError, Repair, ShotEntry};

use crate::scene::{end_of, long, sealed, shaft, shot, stamp, text};
use crate::simulated::SimulatedDisk;

const PATH: &str = "dozen.jsonl";

/// A million bytes, of which half is read.
const RECORDS: u64 = 2200;

fn disk(lines: &[String]) -> SimulatedDisk {
    let disk = SimulatedDisk::new(1);
    disk.put(Path::new(PATH), &text(lines));
    disk
}

fn whole(disk: &SimulatedDisk) -> Journal<SimulatedDisk> {
    Journal::open_on(disk.clone(), Path::new(PATH)).unwrap()
}

fn to_add(disk: &SimulatedDisk) -> Journal<SimulatedDisk> {
    Journal::open_to_add_on(disk.clone(), Path::new(PATH)).unwrap()
}

/// Adds `entry` both ways; the journals must come out the same byte for byte. Returns how many bytes were read.
fn added(lines: &[String], entry: &Entry) -> Result<u64, JournalError> {
    let (one, other) = (disk(lines), disk(lines));
    let by_all = whole(&one).append(entry.clone(), &stamp(7)).map_err(|error| error.to_string());
    let before = other.read();
    let by_end = to_add(&other).append(entry.clone(), &stamp(7));
    assert_eq!(by_end.as_ref().map_err(ToString::to_string), by_all.as_ref().map_err(Clone::clone));
    assert_eq!(one.bytes(Path::new(PATH)), other.bytes(Path::new(PATH)));
    by_end.map(|_| other.read() - before)
}

fn half(lines: &[String]) -> u64 {
    text(lines).len() as u64 * 2 / 3
}

#[test]
fn an_entry_comes_out_the_same_and_only_the_end_is_read() {
    let lines = long(RECORDS);
    let bow = Entry::Bow(BowEntry::Leave { leave: "for good".into() });
    for entry in [Entry::End(end_of(&["R", "1", "2"])), shaft("3", "lost"), bow] {
        let read = added(&lines, &entry).unwrap();
        assert!(read < half(&lines), "{read} bytes were read");
    }
    let disk = disk(&lines);
    let mut journal = to_add(&disk);
    let confirmed = journal.undo(&stamp(8)).unwrap();
    assert_eq!(confirmed.record.entry.kind(), "undo");
    journal.append(Entry::End(end_of(&["1"])), &stamp(9)).unwrap();
    assert!(disk.read() < half(&lines));
    assert_eq!(whole(&disk).state().records(), RECORDS + 2);
}

/// Whatever the end does not tell is read from the beginning.
#[test]
fn what_the_end_does_not_tell_is_looked_up() {
    let mut lines = long(3);
    let scene = disk(&lines);
    let mut end = end_of(&["R"]);
    end.shots.push(ShotEntry { index_deg: Some(120.0), ..shot("2") });
    whole(&scene).append(Entry::End(end), &stamp(3)).unwrap();
    whole(&scene).append(shaft("3", "broken"), &stamp(4)).unwrap();
    let mut journal = whole(&scene);
    for id in 5..RECORDS {
        let note = Some("windy ".repeat(50));
        let end = quarterturn_journal::EndEntry { note, ..end_of(&["R", "1"]) };
        journal.append(Entry::End(end), &stamp(id)).unwrap();
    }
    let bytes = scene.bytes(Path::new(PATH)).unwrap();
    lines = String::from_utf8(bytes).unwrap().lines().map(str::to_owned).collect();
    // Where its mark stands was said at the beginning, and so was that the other is broken.
    assert!(added(&lines, &Entry::End(end_of(&["R", "2"]))).unwrap() > half(&lines));
    assert!(added(&lines, &Entry::End(end_of(&["3"]))).is_err());
    assert!(added(&lines, &shaft("3", "broken")).is_err());
    assert!(added(&lines, &Entry::End(end_of(&["nobody"]))).is_err());
    let last = lines.last().unwrap();
    assert!(last.contains("\"shaft\":\"1\"") && !last.contains("\"shaft\":\"2\""));
}

#[test]
fn an_undo_goes_back_past_the_end_that_was_read() {
    let disk = disk(&long(RECORDS));
    let mut journal = whole(&disk);
    for id in 0..RECORDS {
        if journal.undo(&stamp(id)).is_err() {
            break;
        }
    }
    let error = to_add(&disk).undo(&stamp(1)).unwrap_err();
    assert!(matches!(error, JournalError::NothingToUndo { .. }), "{error}");
    whole(&disk).append(shaft("2", "lost"), &stamp(2)).unwrap();
    to_add(&disk).undo(&stamp(3)).unwrap();
    assert!(whole(&disk).state().history().events.is_empty());
}

#[test]
fn damage_near_the_end_stops_and_is_named_by_its_line() {
    let mut lines = long(RECORDS);
    let at = lines.len() - 3;
    lines[at] = lines[at].replace(".5", ".6");
    let error = Journal::open_to_add_on(disk(&lines), Path::new(PATH)).err().unwrap();
    let JournalError::Damaged { line, .. } = error else { panic!("{error}") };
    assert_eq!(line, at as u64 + 1);
}

/// The greatest number there is must not be counted past.
#[test]
fn a_line_may_state_any_number() {
    let mut lines = long(RECORDS);
    for at in [lines.len() - 1, 1000] {
        let body = lines[at].split(",\"crc\"").next().unwrap();
        lines[at] =
            sealed(&body.replace(&format!("\"seq\":{}", at + 1), &format!("\"seq\":{}", u64::MAX)));
        for line in [0, 1, 2, 1190] {
            let mut lines = lines.clone();
            lines.rotate_left(line);
            let disk = disk(&lines);
            assert!(Journal::open_to_add_on(disk.clone(), Path::new(PATH)).is_err());
            let _ = Repair::plan_on(&disk, Path::new(PATH), &stamp(1));
        }
    }
    let disk = disk(&lines);
    let repair = Repair::plan_on(&disk, Path::new(PATH), &stamp(1)).unwrap();
    assert_eq!(repair.lost, [1001]);
}

/// R13 in small: a hundred thousand shots.
#[test]
fn a_hundred_thousand_shots_are_opened_and_added_to() {
    let lines = long(25_001);
    let disk = disk(&lines);
    let events = whole(&disk).state().history().events.len();
    assert_eq!(events, 25_000);
    let before = disk.read();
    let confirmed = to_add(&disk).append(Entry::End(end_of(&["R", "1", "2", "3"])), &stamp(1));
    assert_eq!(confirmed.unwrap().record.seq, 25_002);
    assert!(disk.read() - before < 1 << 20, "{} bytes were read", disk.read() - before);
}
