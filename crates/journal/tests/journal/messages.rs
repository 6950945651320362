//! Every fault has a way on where there is one.

use std::io::ErrorKind;

use quarterturn_journal::{Damage, Entry, Finding, Journal, JournalError, ShotEntry, read_end};

use crate::scene::{Scene, end_of, shot};

fn way_on(shot_entry: ShotEntry) -> Option<String> {
    let mut end = end_of(&["R"]);
    end.shots.push(shot_entry);
    let JournalError::Refused { faults } = Scene::begun().append(Entry::End(end)).unwrap_err()
    else {
        panic!("the end is refused")
    };
    faults[0].way_on()
}

#[test]
fn the_way_on_names_what_there_is() {
    let cases = [
        (shot("7"), "it has 1, 2, 3, R"),
        (ShotEntry { call: Some("ok".into()), ..shot("1") }, "known: good, poor"),
        (
            ShotEntry { flags: vec!["rain".into()], ..shot("1") },
            "known: lost, broken, wind, contact, nock-moved, doubtful",
        ),
        (ShotEntry { x_mm: Some(1e4), ..shot("1") }, "check the number and its unit"),
        (
            ShotEntry { x_mm: None, y_mm: None, ..shot("1") },
            "give x_mm and y_mm, or flag it lost or broken",
        ),
        (shot("R"), "take one of the two out"),
    ];
    for (shot, expected) in cases {
        assert_eq!(way_on(shot).as_deref(), Some(expected));
    }
    let faults = read_end(r#"{"shots":[{"shaft":7,"x_mm":null}]}"#).unwrap_err();
    let ways: Vec<_> = faults.iter().filter_map(quarterturn_journal::Fault::way_on).collect();
    assert_eq!(ways, ["put it in quotes", "leave out what is not known"]);
}

#[test]
fn errors_name_the_file_and_the_line() {
    let scene = Scene::empty();
    let path = scene.path.display().to_string();
    let missing = Journal::open(&scene.path).err().unwrap();
    assert_eq!(missing.to_string(), format!("there is no journal {path}"));
    assert_eq!(missing.way_on(), Some("begin one with `new`, or check the name"));

    let scene = Scene::with_five_records();
    let mut lines = scene.lines();
    lines[2] = lines[2].replace("lost", "Lost");
    std::fs::write(&scene.path, lines.join("\n") + "\n").unwrap();
    let damaged = Journal::open(&scene.path).err().unwrap();
    assert_eq!(
        damaged.to_string(),
        format!(
            "{}, line 3: its checksum does not fit: it was changed after it was written",
            scene.path.display()
        )
    );
    assert_eq!(
        damaged.way_on(),
        Some(
            "take the line from a copy, or see what `repair --dry-run` can keep; nothing was changed"
        )
    );
}

#[test]
fn findings_name_the_line_and_what_is_wrong_with_it() {
    let number = |found, expected| Damage::Number { found, expected };
    let cases = [
        (number(3, 2).to_string(), "record 3 stands where record 2 belongs: a line is missing"),
        (
            number(2, 3).to_string(),
            "record 2 stands where record 3 belongs: a line stands twice or was moved",
        ),
        (
            Finding::Damaged { line: 4, damage: Damage::NoRecord }.to_string(),
            "line 4: this is not a record with its checksum at the end",
        ),
        (Finding::Missing { from: 4, to: 4 }.to_string(), "record 4 has no line"),
        (Finding::Missing { from: 4, to: 6 }.to_string(), "records 4 to 6 have no line"),
        (
            Finding::LeftOver { line: 4, record: 3 }.to_string(),
            "line 4: record 3 stands elsewhere already, or is not of this journal",
        ),
        (
            Finding::Moved { line: 4, record: 5 }.to_string(),
            "line 4: record 5 stands before the one that it follows",
        ),
        (
            Finding::Unlinked { line: 4, record: 4 }.to_string(),
            "line 4: record 4 was not written after the one before it: one of the two was exchanged",
        ),
    ];
    for (said, expected) in cases {
        assert_eq!(said, expected);
    }
}

#[test]
fn what_could_not_be_written_has_a_way_on() {
    let path = Scene::empty().path;
    let failed =
        |kind: ErrorKind| JournalError::NotRecorded { path: path.clone(), source: kind.into() };
    let cases = [
        (ErrorKind::NotFound, "make the folder first, or check its name"),
        (ErrorKind::PermissionDenied, "see to it that you may write there, then enter it again"),
        (ErrorKind::ReadOnlyFilesystem, "see to it that you may write there, then enter it again"),
        (ErrorKind::StorageFull, "make room or mend the disk, then enter it again"),
    ];
    for (kind, expected) in cases {
        assert_eq!(failed(kind).way_on(), Some(expected));
        assert!(failed(kind).to_string().starts_with("nothing was recorded: could not write to "));
    }
    let uncertain = JournalError::NotConfirmed { path, source: ErrorKind::StorageFull.into() };
    assert!(uncertain.to_string().starts_with("it is not certain that this was recorded: "));
    assert_eq!(uncertain.way_on(), Some("look with `show` before you enter it again"));
}
