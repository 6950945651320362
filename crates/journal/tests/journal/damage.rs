//! Damage is never skipped in silence: every changed bit and every moved line is noticed.

use std::fs::File;
use std::io::{Seek, SeekFrom, Write};

use quarterturn_journal::{Damage, Journal, JournalError};

use crate::scene::{Scene, beginning, stamp};

fn damage(scene: &Scene) -> (u64, Damage) {
    let before = scene.bytes();
    match Journal::open(&scene.path) {
        Err(JournalError::Damaged { line, damage, .. }) => {
            assert_eq!(scene.bytes(), before);
            (line, damage)
        }
        Err(error) => panic!("{error}"),
        Ok(_) => panic!("the damage was not noticed"),
    }
}

fn damage_of_lines(lines: &[&str]) -> (u64, Damage) {
    damage(&Scene::of((lines.join("\n") + "\n").as_bytes()))
}

#[test]
fn every_single_bit_is_watched() {
    let scene = Scene::with_five_records();
    let mut file = File::options().write(true).open(&scene.path).unwrap();
    let mut put = |at: usize, byte: u8| {
        file.seek(SeekFrom::Start(at as u64)).unwrap();
        file.write_all(&[byte]).unwrap();
    };
    for (at, byte) in scene.bytes().into_iter().enumerate() {
        for bit in 0..8 {
            put(at, byte ^ (1 << bit));
            // A changed last line feed leaves a last line without an end.
            let noticed = Journal::open(&scene.path).map_or(true, |read| read.torn().is_some());
            assert!(noticed, "bit {bit} of byte {at}");
        }
        put(at, byte);
    }
    assert_eq!(scene.open().torn(), None);
}

#[test]
fn a_deleted_line_is_named() {
    let lines = Scene::with_five_records().lines();
    let lines: Vec<_> = lines.iter().map(String::as_str).collect();
    // The last line alone can be deleted without a trace: nothing follows that knows of it.
    for deleted in 0..lines.len() - 1 {
        let mut left = lines.clone();
        left.remove(deleted);
        let number = deleted as u64 + 1;
        let expected = Damage::Number { found: number + 1, expected: number };
        assert_eq!(damage_of_lines(&left), (number, expected));
    }
}

#[test]
fn a_doubled_line_is_named() {
    let lines = Scene::with_five_records().lines();
    let lines: Vec<_> = lines.iter().map(String::as_str).collect();
    for doubled in 0..lines.len() {
        let mut more = lines.clone();
        more.insert(doubled, lines[doubled]);
        let number = doubled as u64 + 1;
        let expected = Damage::Number { found: number, expected: number + 1 };
        assert_eq!(damage_of_lines(&more), (number + 1, expected));
    }
}

#[test]
fn swapped_lines_are_named() {
    let lines = Scene::with_five_records().lines();
    let lines: Vec<_> = lines.iter().map(String::as_str).collect();
    for first in 0..lines.len() {
        for second in first + 1..lines.len() {
            let mut other = lines.clone();
            other.swap(first, second);
            let (number, found) = (first as u64 + 1, second as u64 + 1);
            let expected = Damage::Number { found, expected: number };
            assert_eq!(damage_of_lines(&other), (number, expected));
        }
    }
}

#[test]
fn a_line_of_another_journal_is_named() {
    let lines = Scene::with_five_records().lines();
    let other = Scene::empty();
    Journal::create(&other.path, beginning(), &stamp(99)).unwrap();
    let mut mixed = other.lines();
    mixed.extend(lines.into_iter().skip(1));
    let mixed: Vec<_> = mixed.iter().map(String::as_str).collect();
    assert_eq!(damage_of_lines(&mixed), (2, Damage::Exchanged));
}

/// A first line with this text before its checksum, which is right.
fn sealed(body: &str) -> String {
    format!("{body},\"crc\":\"{:08x}\"}}\n", crc32fast::hash(body.as_bytes()))
}

#[test]
fn a_line_that_is_whole_but_wrong_is_named() {
    let record = |kind: &str, data: &str| {
        sealed(&format!(
            "{{\"v\":1,\"seq\":1,\"id\":\"00000000000000aa\",\"t\":\"2027-03-02T10:15:00Z\",\
             \"kind\":\"{kind}\",\"data\":{data},\"prev\":\"00000000\""
        ))
    };
    let cases = [
        ("{}\n".to_owned(), "this is not a record with its checksum at the end"),
        ("\n".to_owned(), "this is not a record with its checksum at the end"),
        (
            sealed("{\"v\":2,\"shape\":\"unknown\""),
            "it has format 2, and this program reads format 1",
        ),
        (sealed("{\"v\":1"), "it cannot be read: missing field `seq`"),
        (record("dream", "{}"), "it is of a kind that this program does not know: \"dream\""),
        (record("undo", "{\"seq\":1}"), "the first record must say how the journal was begun"),
        (record("new", "{\"shafts\":[]}"), "it cannot be read: missing field `references`"),
        ("x".repeat(70_000), "it is longer than 65536 bytes"),
    ];
    for (text, expected) in cases {
        let (line, damage) = damage(&Scene::of(text.as_bytes()));
        assert_eq!((line, damage.to_string().as_str()), (1, expected));
    }
}

#[test]
fn a_record_that_cannot_be_is_named() {
    let line = Scene::begun().lines().remove(0);
    let prev = crc32fast::hash(line.as_bytes());
    let second = |kind: &str, data: &str| {
        let second = sealed(&format!(
            "{{\"v\":1,\"seq\":2,\"id\":\"00000000000000aa\",\"t\":\"2027-03-02T10:15:00Z\",\
             \"kind\":\"{kind}\",\"data\":{data},\"prev\":\"{prev:08x}\""
        ));
        format!("{line}\n{second}")
    };
    let cases = [
        (
            second("shaft", "{\"shaft\":\"9\",\"change\":\"lost\"}"),
            "it says what cannot be: there is no shaft \"9\" in this journal",
        ),
        (
            second("undo", "{\"seq\":1}"),
            "it says what cannot be: record 1 is not the last entry that stands",
        ),
        (
            second("end", "{\"shots\":[{\"shaft\":\"1\",\"x_mm\":1,\"y_mm\":2}]}"),
            "it says what cannot be: \"index_deg\" is missing",
        ),
    ];
    for (text, expected) in cases {
        let (number, damage) = damage(&Scene::of(text.as_bytes()));
        assert_eq!((number, damage.to_string().as_str()), (2, expected));
    }
}

#[test]
fn other_line_ends_and_bytes_are_noticed() {
    let scene = Scene::with_five_records();
    let text = String::from_utf8(scene.bytes()).unwrap();
    let returns = text.replace('\n', "\r\n");
    assert_eq!(damage(&Scene::of(returns.as_bytes())), (1, Damage::NoRecord));
    let mut bytes = text.into_bytes();
    bytes[40] = 0xff;
    assert_eq!(damage(&Scene::of(&bytes)), (1, Damage::Checksum));
}
