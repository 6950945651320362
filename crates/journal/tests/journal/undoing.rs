//! An undo takes back the last entry that stands; nothing is ever erased.

use quarterturn_journal::{BowEntry, Deed, Entry, Journal, JournalError};
use quarterturn_tuning::{Event, ShaftState};

use crate::scene::{Scene, end_of, shaft, stamp};

fn undo(journal: &mut Journal) -> (u64, Event) {
    let confirmed = journal.undo(&stamp(3)).unwrap();
    let Entry::Undo(undo) = confirmed.record.entry else { panic!("an undo was appended") };
    let Some(Deed::Added(event)) = confirmed.recalled else { panic!("an event was taken back") };
    (undo.seq, event)
}

/// What was kept in mind while writing is what is read again.
fn same(read: &Journal, written: &Journal) {
    assert_eq!(read.state().history(), written.state().history());
    assert_eq!(read.state().roster(), written.state().roster());
    assert_eq!(read.state().records(), written.state().records());
    assert_eq!(read.state().seed(), written.state().seed());
}

#[test]
fn undo_after_undo_goes_back_to_the_beginning() {
    let scene = Scene::begun();
    let mut journal = scene.open();
    let bow = Entry::Bow(BowEntry::Leave { leave: "for good".into() });
    for entry in [Entry::End(end_of(&["R", "2"])), shaft("2", "lost"), bow] {
        journal.append(entry, &stamp(2)).unwrap();
    }
    let full = journal.state().history().clone();

    assert_eq!(undo(&mut journal), (4, Event::BowLeft));
    assert_eq!(undo(&mut journal), (3, full.events[1].clone()));
    assert_eq!(undo(&mut journal), (2, full.events[0].clone()));
    assert!(journal.state().history().events.is_empty());
    let error = journal.undo(&stamp(3)).unwrap_err();
    assert!(matches!(error, JournalError::NothingToUndo { .. }));
    assert_eq!(journal.state().records(), 7);
    same(&scene.open(), &journal);
}

#[test]
fn an_entry_after_an_undo_is_the_next_to_be_taken_back() {
    let scene = Scene::with_five_records();
    let mut journal = scene.open();
    assert_eq!(journal.state().history().events.len(), 2);
    assert_eq!(undo(&mut journal).0, 5);
    assert_eq!(undo(&mut journal).0, 2);
    same(&scene.open(), &journal);
}

#[test]
fn what_was_taken_back_no_longer_counts() {
    let scene = Scene::begun();
    let name = "2".parse().unwrap();
    let mut end = end_of(&["R", "2"]);
    end.shots[1].index_deg = Some(90.0);
    end.shots[1].flags = vec!["broken".into()];
    scene.append(Entry::End(end)).unwrap();
    let mut journal = scene.open();
    assert_eq!(journal.state().roster().find(&name).unwrap().state, ShaftState::Broken);
    journal.undo(&stamp(3)).unwrap();
    let state = journal.state();
    let roster = state.roster();
    let standing = roster.find(&name).unwrap();
    assert_eq!(standing.state, ShaftState::InUse);
    assert_eq!(standing.index_now.degrees().to_bits(), 0.0_f64.to_bits());
    assert!(state.evenings().is_empty());
}

#[test]
fn nothing_is_erased() {
    let scene = Scene::begun();
    scene.append(shaft("2", "lost")).unwrap();
    let before = scene.bytes();
    scene.open().undo(&stamp(3)).unwrap();
    assert!(scene.bytes().starts_with(&before));
    assert!(scene.lines()[2].contains(r#""kind":"undo","data":{"seq":2},"#));
}

#[test]
fn the_seed_changes_with_every_record_and_only_then() {
    let scene = Scene::with_five_records();
    let seed = scene.open().state().seed();
    assert_eq!(scene.open().state().seed(), seed);
    scene.open().undo(&stamp(3)).unwrap();
    assert_ne!(scene.open().state().seed(), seed);
}
