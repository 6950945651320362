//! Corrections, what is brought back, who joins later, and notes: every one is a record, and each can be undone.

use quarterturn_geometry::{Angle, Index};
use quarterturn_journal::{
    AddEntry, Deed, EndEntry, Entry, Fate, FixEntry, Journal, JournalError, Log, NoteEntry,
};
use quarterturn_tuning::Event;

use crate::scene::{Scene, end_of, stamp};

/// The end that stands as end `number`, and the record that entered it.
fn end(journal: &Journal, number: usize) -> (u64, EndEntry) {
    let log = Log::of(journal.records().unwrap());
    let end = &log.ends[number - 1];
    (end.seq, end.entry.clone())
}

fn x_mm(journal: &Journal, number: usize, shot: usize) -> Option<f64> {
    Some(journal.state().ends().nth(number - 1)?.shots[shot].hit?.at.x_mm)
}

/// Corrects where the second shot of an end hit.
fn fix(journal: &mut Journal, number: usize, x_mm: f64) -> Result<(), JournalError> {
    let (seq, mut end) = end(journal, number);
    end.shots[1].x_mm = Some(x_mm);
    journal.append(Entry::Fix(FixEntry { seq, end }), &stamp(4)).map(|_| ())
}

/// Read from the disk it says what was kept in mind while it was written.
#[track_caller]
fn same(scene: &Scene, journal: &Journal) {
    assert_eq!(scene.open().state().history(), journal.state().history());
    assert_eq!(scene.open().state().roster(), journal.state().roster());
}

#[test]
fn an_earlier_end_is_put_right_and_nothing_is_rewritten() {
    let scene = Scene::begun();
    scene.append(Entry::End(end_of(&["R", "1"]))).unwrap();
    scene.append(Entry::End(end_of(&["R", "2"]))).unwrap();
    let before = scene.bytes();
    let mut journal = scene.open();
    fix(&mut journal, 1, -7.0).unwrap();
    assert!(scene.bytes().starts_with(&before));
    assert_eq!((x_mm(&journal, 1, 1), x_mm(&journal, 2, 1)), (Some(-7.0), Some(31.0)));
    fix(&mut journal, 1, -9.0).unwrap();
    assert_eq!(x_mm(&journal, 1, 1), Some(-9.0));
    same(&scene, &journal);
    for stands in [-7.0, 31.0] {
        let confirmed = journal.undo(&stamp(5)).unwrap();
        assert_eq!(confirmed.recalled, Some(Deed::Corrected { end: 1 }));
        assert_eq!(x_mm(&journal, 1, 1), Some(stands));
        same(&scene, &journal);
    }
}

#[test]
fn undo_and_redo_go_to_any_depth() {
    let scene = Scene::begun();
    let mut journal = scene.open();
    let mut states = vec![journal.state().history().clone()];
    journal.append(Entry::End(end_of(&["R", "1"])), &stamp(2)).unwrap();
    states.push(journal.state().history().clone());
    fix(&mut journal, 1, 5.0).unwrap();
    states.push(journal.state().history().clone());
    let add = AddEntry { shaft: "9".into(), index_deg: Some(-90.0), ..AddEntry::default() };
    journal.append(Entry::Add(add), &stamp(2)).unwrap();
    states.push(journal.state().history().clone());
    journal.append(Entry::End(end_of(&["R", "9"])), &stamp(2)).unwrap();
    states.push(journal.state().history().clone());
    journal.append(Entry::Note(NoteEntry { note: "dusk".into() }), &stamp(2)).unwrap();
    states.push(journal.state().history().clone());
    for _ in 0..3 {
        for state in states.iter().rev().skip(1) {
            journal.undo(&stamp(3)).unwrap();
            assert_eq!(journal.state().history(), state);
            same(&scene, &journal);
        }
        assert!(matches!(journal.undo(&stamp(3)), Err(JournalError::NothingToUndo { .. })));
        for state in &states[1..] {
            journal.redo(&stamp(3)).unwrap();
            assert_eq!(journal.state().history(), state);
            same(&scene, &journal);
        }
        assert!(matches!(journal.redo(&stamp(3)), Err(JournalError::NothingToRedo { .. })));
    }
}

#[test]
fn what_was_taken_back_is_gone_for_redo_once_something_else_is_entered() {
    let scene = Scene::with_five_records();
    let mut journal = scene.open();
    journal.undo(&stamp(3)).unwrap();
    journal.append(Entry::End(end_of(&["R", "2"])), &stamp(3)).unwrap();
    assert!(matches!(journal.redo(&stamp(3)), Err(JournalError::NothingToRedo { .. })));
}

#[test]
fn only_an_end_that_stands_is_corrected() {
    let scene = Scene::with_five_records();
    for seq in [1, 3, 4, 99] {
        let end = end_of(&["R"]);
        let error = scene.append(Entry::Fix(FixEntry { seq, end })).unwrap_err().to_string();
        assert_eq!(error, format!("seq: record {seq} is not an end that stands"));
    }
}

#[test]
fn who_joins_later_is_shot_like_the_others() {
    let scene = Scene::begun();
    let shaft = AddEntry { shaft: "9".into(), index_deg: Some(-90.0), ..AddEntry::default() };
    scene.append(Entry::Add(shaft.clone())).unwrap();
    let second =
        AddEntry { shaft: "S".into(), role: Some("reference".into()), ..AddEntry::default() };
    scene.append(Entry::Add(second)).unwrap();
    scene.append(Entry::End(end_of(&["R", "S", "9"]))).unwrap();
    let journal = scene.open();
    let roster = journal.state().roster();
    let standing = roster.find(&"9".parse().unwrap()).unwrap();
    assert_eq!((standing.index_now, standing.counted.len()), (Index::from_degrees(270.0), 1));
    assert_eq!(roster.references.len(), 2);
    for (entry, message) in [
        (shaft.clone(), "shaft: the journal has 9 already"),
        (AddEntry { shaft: "a b".into(), ..shaft.clone() }, "shaft: \"a b\" cannot name a shaft"),
        (
            AddEntry { role: Some("king".into()), shaft: "8".into(), ..shaft.clone() },
            "role: \"king\" is not known here",
        ),
        (
            AddEntry { index_deg: Some(400.0), shaft: "8".into(), ..shaft },
            "index_deg: 400 deg is too much: at most 360 deg either way",
        ),
    ] {
        assert_eq!(scene.append(Entry::Add(entry)).unwrap_err().to_string(), message);
    }
}

#[test]
fn a_note_says_something() {
    let scene = Scene::begun();
    let note = |note: &str| Entry::Note(NoteEntry { note: note.into() });
    scene.append(note("new string")).unwrap();
    assert_eq!(scene.append(note("  ")).unwrap_err().to_string(), "\"note\" is missing");
    assert!(scene.open().state().history().events.is_empty());
}

#[test]
fn the_log_says_what_became_of_every_record() {
    let scene = Scene::with_five_records();
    let mut journal = scene.open();
    fix(&mut journal, 1, 1.0).unwrap();
    fix(&mut journal, 1, 2.0).unwrap();
    let fates = |journal: &Journal| -> Vec<Fate> {
        Log::of(journal.records().unwrap()).records.into_iter().map(|(_, fate)| fate).collect()
    };
    let (stands, gone) = (Fate::Stands, |by| Fate::TakenBack { by });
    let corrected = |by| Fate::Corrected { by };
    let so_far = fates(&journal);
    assert_eq!(so_far, [stands, corrected(7), gone(4), stands, stands, stands, stands]);
    journal.undo(&stamp(3)).unwrap();
    assert_eq!(fates(&journal)[1], corrected(6));
    assert_eq!(fates(&journal)[6], gone(8));
    journal.redo(&stamp(3)).unwrap();
    assert_eq!(fates(&journal)[..7], so_far);
}

#[test]
fn numbers_under_other_names_are_told() {
    let scene = Scene::begun();
    let mut end = end_of(&["R"]);
    end.shots[0].x_mm = None;
    end.shots[0].others.insert("x_cm".into(), 3.1.into());
    let error = scene.append(Entry::End(end)).unwrap_err().to_string();
    let expected = "shots[0].x_cm: \"x_cm\" is not read here: \"x_mm\" is expected, in millimetres";
    assert_eq!(error, expected);
}

#[test]
fn a_lean_read_otherwise_is_written_out_with_how_well_it_is_known() {
    let scene = Scene::begun();
    let mut end = end_of(&["R", "1"]);
    end.shots[1].tail_x_mm = Some(-21.0);
    end.shots[1].tail_y_mm = Some(0.0);
    end.shots[1].protruding_mm = Some(600.0);
    scene.append(Entry::End(end)).unwrap();
    let journal = scene.open();
    let Some(Event::End(end)) = journal.state().history().events.last() else { panic!() };
    let hit = end.shots[1].hit.unwrap();
    assert_eq!(hit.lean.map(|lean| lean.x), Some(Angle::from_degrees(-2.006)));
    assert_eq!(hit.lean_sd, Some(Angle::from_degrees(0.479)));
}
