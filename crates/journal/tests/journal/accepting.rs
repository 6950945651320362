//! What an entry must keep to, and what is written out for it.

use quarterturn_geometry::{Index, Millimetres};
use quarterturn_journal::{BowEntry, EndEntry, Entry, JournalError, ShotEntry};
use quarterturn_tuning::{Event, ShaftState};

use crate::scene::{Scene, end_of, shaft, shot, stamp};

/// What is said of an end whose second shot is `shot`.
fn refusal(shot_entry: ShotEntry) -> String {
    let mut end = end_of(&["R"]);
    end.shots.push(shot_entry);
    refused(&Scene::begun(), Entry::End(end))
}

fn refused(scene: &Scene, entry: Entry) -> String {
    let before = scene.bytes();
    let error = scene.append(entry).unwrap_err();
    assert!(matches!(&error, JournalError::Refused { faults } if !faults.is_empty()), "{error}");
    assert_eq!(scene.bytes(), before);
    error.to_string()
}

fn index_now(scene: &Scene, name: &str) -> f64 {
    let journal = scene.open();
    journal.state().roster().find(&name.parse().unwrap()).unwrap().index_now.degrees()
}

#[test]
fn what_is_left_out_is_written_out() {
    let scene = Scene::begun();
    let mut end = end_of(&["R", "2"]);
    end.shots[1].index_deg = Some(-270.0);
    scene.append(Entry::End(end)).unwrap();
    assert_eq!(index_now(&scene, "2").to_bits(), 90.0_f64.to_bits());
    let confirmed = scene.append(Entry::End(end_of(&["R", "1", "2"]))).unwrap();
    let Entry::End(end) = confirmed.record.entry else { panic!("an end was appended") };
    let indices: Vec<_> = end.shots.iter().map(|shot| shot.index_deg).collect();
    assert_eq!(indices, [Some(0.0), Some(0.0), Some(90.0)]);
    assert_eq!(end.at.as_deref(), Some("2027-03-02T10:15:00+01:00"));
    assert_eq!(end.evening.as_deref(), Some("2027-03-02"));
    assert!(scene.lines()[2].contains(r#""shaft":"2","index_deg":90.0,"#));
}

#[test]
fn the_evening_is_the_date_at_which_the_end_was_shot() {
    let scene = Scene::begun();
    let at = Some("2027-02-28T23:50:00-05:00".to_owned());
    scene.append(Entry::End(EndEntry { at, ..end_of(&["R"]) })).unwrap();
    let evening = Some("the wet one".to_owned());
    scene.append(Entry::End(EndEntry { evening, ..end_of(&["R"]) })).unwrap();
    scene.append(Entry::End(end_of(&["R"]))).unwrap();
    let journal = scene.open();
    assert_eq!(journal.state().evenings(), ["2027-02-28", "the wet one", "2027-03-02"]);
}

#[test]
fn minus_zero_becomes_zero() {
    let scene = Scene::begun();
    let mut end = end_of(&["R"]);
    end.shots[0].x_mm = Some(-0.0);
    scene.append(Entry::End(end)).unwrap();
    assert!(scene.lines()[1].contains(r#""x_mm":0.0,"#));
}

#[test]
fn only_another_distance_is_kept() {
    for (distance_m, kept) in [(18.3, None), (18.3004, None), (9.0, Some(9.0))] {
        let scene = Scene::begun();
        scene
            .append(Entry::End(EndEntry { distance_m: Some(distance_m), ..end_of(&["R"]) }))
            .unwrap();
        let journal = scene.open();
        let Some(Event::End(end)) = journal.state().history().events.last() else {
            panic!("an end stands")
        };
        assert_eq!(end.distance, kept.map(Millimetres::from_metres));
    }
}

#[test]
fn an_impossible_hit_is_refused_at_its_member() {
    let one = || shot("1");
    let cases = [
        (shot("7"), "shots[1].shaft: there is no shaft \"7\" in this journal"),
        (ShotEntry { x_mm: None, y_mm: None, ..one() }, "shots[1]: this shot has no hit"),
        (ShotEntry { y_mm: None, ..one() }, "shots[1].x_mm: this says nothing without \"y_mm\""),
        (
            ShotEntry { x_mm: None, flags: vec!["lost".into()], ..one() },
            "shots[1].y_mm: this says nothing without \"x_mm\"",
        ),
        (
            ShotEntry { x_mm: Some(3000.5), ..one() },
            "shots[1].x_mm: 3000.5 mm is too much: at most 3000 mm either way",
        ),
        (
            ShotEntry { y_mm: Some(f64::NEG_INFINITY), ..one() },
            "shots[1].y_mm: this is not a finite number",
        ),
        (
            ShotEntry { lean_x_deg: Some(1.0), ..one() },
            "shots[1].lean_x_deg: this says nothing without \"lean_y_deg\"",
        ),
        (
            ShotEntry { lean_x_deg: Some(0.0), lean_y_deg: Some(-61.0), ..one() },
            "shots[1].lean_y_deg: -61 deg is too much: at most 60 deg either way",
        ),
        (
            ShotEntry {
                lean_x_deg: Some(0.0),
                lean_y_deg: Some(0.0),
                x_mm: None,
                y_mm: None,
                ..one()
            },
            "shots[1].lean_x_deg: this says nothing without \"x_mm\"",
        ),
    ];
    for (shot, expected) in cases {
        assert_eq!(refusal(shot), expected);
    }
}

#[test]
fn what_is_said_of_a_shot_must_have_a_meaning() {
    let one = || shot("1");
    let cases = [
        (
            ShotEntry { read_sd_mm: Some(0.0), ..one() },
            "shots[1].read_sd_mm: 0 mm cannot be: more than 0 and at most 1000 mm",
        ),
        (
            ShotEntry { lean_sd_deg: Some(1.0), ..one() },
            "shots[1].lean_sd_deg: this says nothing without \"lean_x_deg\"",
        ),
        (
            ShotEntry { index_deg: Some(f64::NAN), ..one() },
            "shots[1].index_deg: this is not a finite number",
        ),
        (
            ShotEntry { call: Some("fine".into()), ..one() },
            "shots[1].call: \"fine\" is not known here",
        ),
        (
            ShotEntry { flags: vec!["wind".into(), "rain".into()], ..one() },
            "shots[1].flags[1]: \"rain\" is not known here",
        ),
        (shot("R"), "shots[1].shaft: shaft R stands here twice"),
    ];
    for (shot, expected) in cases {
        assert_eq!(refusal(shot), expected);
    }
}

#[test]
fn what_is_just_possible_is_taken() {
    let scene = Scene::begun();
    let farthest = ShotEntry {
        x_mm: Some(-3000.0),
        y_mm: Some(2900.0),
        lean_x_deg: Some(60.0),
        lean_y_deg: Some(-60.0),
        ..shot("1")
    };
    let unread = ShotEntry { x_mm: None, y_mm: None, flags: vec!["lost".into()], ..shot("2") };
    let shots = vec![shot("R"), farthest, unread];
    scene.append(Entry::End(EndEntry { shots, ..EndEntry::default() })).unwrap();
}

#[test]
fn an_impossible_end_is_refused_with_every_fault() {
    let scene = Scene::begun();
    let end = EndEntry {
        at: Some("yesterday".into()),
        evening: Some(" ".into()),
        distance_m: Some(f64::INFINITY),
        ..end_of(&["R", "4", "5"])
    };
    assert_eq!(
        refused(&scene, Entry::End(end)),
        "shots[1].shaft: there is no shaft \"4\" in this journal\n\
         shots[2].shaft: there is no shaft \"5\" in this journal\n\
         at: \"yesterday\" is not a time with its date and zone\n\
         distance_m: this is not a finite number"
    );
    let evening = Some("a\nb".to_owned());
    assert_eq!(
        refused(&scene, Entry::End(EndEntry { evening, ..end_of(&["R"]) })),
        "evening: an evening is named by 1 to 40 characters on one line"
    );
    assert_eq!(
        refused(&scene, Entry::End(EndEntry::default())),
        "shots: at least one is needed here"
    );
}

#[test]
fn a_shaft_out_of_use_is_not_shot() {
    for (change, word) in [
        ("lost", "lost"),
        ("broken", "broken"),
        ("set-aside", "set aside"),
        ("fletched", "fletched"),
    ] {
        let scene = Scene::begun();
        scene.append(shaft("2", change)).unwrap();
        let said = refused(&scene, Entry::End(end_of(&["R", "2"])));
        assert_eq!(said, format!("shots[1].shaft: 2 is recorded as {word}"));
        scene.append(shaft("2", "repaired")).unwrap();
        scene.append(Entry::End(end_of(&["R", "2"]))).unwrap();
    }
}

#[test]
fn a_shaft_lost_in_an_end_is_out_of_use() {
    let scene = Scene::begun();
    let mut end = end_of(&["R", "2"]);
    end.shots[1].flags = vec!["lost".to_owned()];
    scene.append(Entry::End(end)).unwrap();
    let journal = scene.open();
    let lost = journal.state().roster().find(&"2".parse().unwrap()).unwrap();
    assert_eq!(lost.state, ShaftState::Lost);
    assert_eq!(refused(&scene, shaft("2", "lost")), "change: 2 is lost: this change cannot follow");
    scene.append(shaft("2", "readmit")).unwrap();
}

#[test]
fn a_change_of_a_shaft_must_make_sense() {
    let scene = Scene::begun();
    let cases = [
        ("4", "lost", "shaft: there is no shaft \"4\" in this journal"),
        ("2", "bent", "change: \"bent\" is not known here"),
        ("2", "readmit", "change: 2 is in use: this change cannot follow"),
        ("R", "fletched", "change: R is a reference: it is fletched already"),
    ];
    for (name, change, expected) in cases {
        assert_eq!(refused(&scene, shaft(name, change)), expected);
    }
    scene.append(shaft("2", "broken")).unwrap();
    assert_eq!(
        refused(&scene, shaft("2", "readmit")),
        "change: 2 is broken: this change cannot follow"
    );
}

#[test]
fn a_change_of_the_bow_must_make_sense() {
    let change = |note: &str, part: Option<&str>, move_mm| {
        let (note, part) = (note.to_owned(), part.map(str::to_owned));
        Entry::Bow(BowEntry::Change { note, part, move_mm })
    };
    let scene = Scene::begun();
    let cases = [
        (change(" ", None, None), "\"note\" is missing"),
        (change("turned", Some("limb"), None), "part: \"limb\" is not known here"),
        (
            change("turned", None, Some([0.0, 301.0])),
            "move_mm[1]: 301 mm is too much: at most 300 mm either way",
        ),
        (Entry::Bow(BowEntry::Leave { leave: String::new() }), "\"leave\" is missing"),
    ];
    for (entry, expected) in cases {
        assert_eq!(refused(&scene, entry), expected);
    }
    scene.append(change("rest out", Some("rest"), Some([0.5, 0.0]))).unwrap();
    scene.append(Entry::Bow(BowEntry::Leave { leave: "for good".into() })).unwrap();
    assert_eq!(scene.open().state().history().events.last(), Some(&Event::BowLeft));
}

#[test]
fn a_second_beginning_and_another_undo_are_refused() {
    let scene = Scene::with_five_records();
    let again = scene.open().state().beginning().clone();
    assert_eq!(refused(&scene, Entry::New(again)), "this journal is begun already");
    let undo = quarterturn_journal::UndoEntry { seq: 2 };
    assert_eq!(
        refused(&scene, Entry::Undo(undo)),
        "seq: record 2 is not the last entry that stands"
    );
}

#[test]
fn an_entry_longer_than_a_line_is_refused() {
    let scene = Scene::begun();
    let end = |letters| EndEntry { note: Some("n".repeat(letters)), ..end_of(&["R"]) };
    let mut journal = scene.open();
    let fixed = {
        let confirmed = journal.append(Entry::End(end(0)), &stamp(2)).unwrap();
        assert_eq!(confirmed.record.seq, 2);
        scene.lines()[1].len()
    };
    journal.append(Entry::End(end(65_536 - fixed)), &stamp(2)).unwrap();
    assert_eq!(scene.open().state().records(), 3);
    let error = journal.append(Entry::End(end(65_537 - fixed)), &stamp(2)).unwrap_err();
    assert_eq!(error.to_string(), "the entry is too long: 65537 bytes, at most 65536");
}

#[test]
fn marks_stand_where_they_were_last_recorded() {
    let scene = Scene::begun();
    for deg in [0.0, 30.0, 217.5, 359.999_999_999_999_94] {
        let mut end = end_of(&["R", "3"]);
        end.shots[1].index_deg = Some(deg);
        scene.append(Entry::End(end)).unwrap();
        let now = index_now(&scene, "3");
        assert_eq!(now.to_bits(), Index::from_degrees(deg).degrees().to_bits());
    }
}
