//! Every fault has a way on where there is one.

use quarterturn_journal::{Entry, Journal, JournalError, ShotEntry, read_end};

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
