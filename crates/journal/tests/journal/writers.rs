//! One writer at a time; readers are never kept waiting.

use std::fs::{self, File};
use std::thread;

use quarterturn_journal::{Entry, JournalError};

use crate::scene::{Scene, end_of, shaft, stamp};

#[test]
fn writers_at_the_same_time_share_one_chain() {
    const EACH: u64 = 20;
    let scene = Scene::begun();
    thread::scope(|scope| {
        for writer in 0..4 {
            let mut journal = scene.open();
            scope.spawn(move || {
                for n in 0..EACH {
                    let end = Entry::End(end_of(&["R", "1"]));
                    journal.append(end, &stamp(writer * EACH + n)).unwrap();
                }
            });
        }
        scope.spawn(|| {
            for _ in 0..50 {
                scene.open();
            }
        });
    });
    let journal = scene.open();
    assert_eq!(journal.torn(), None);
    assert_eq!(journal.state().records(), 1 + 4 * EACH);
}

#[test]
fn an_entry_is_checked_against_what_another_wrote_since() {
    let scene = Scene::begun();
    let mut stale = scene.open();
    let mut end = end_of(&["R", "1", "2"]);
    end.shots[1].index_deg = Some(60.0);
    scene.append(Entry::End(end)).unwrap();
    scene.append(shaft("2", "broken")).unwrap();
    let error = stale.append(Entry::End(end_of(&["2"])), &stamp(5)).unwrap_err();
    assert_eq!(error.to_string(), "shots[0].shaft: 2 is recorded as broken");
    let confirmed = stale.append(Entry::End(end_of(&["1"])), &stamp(5)).unwrap();
    assert_eq!(confirmed.record.seq, 4);
    let Entry::End(end) = confirmed.record.entry else { panic!("an end was appended") };
    assert_eq!(end.shots[0].index_deg, Some(60.0));
}

#[test]
fn a_journal_that_was_replaced_is_read_again() {
    let scene = Scene::begun();
    let mut stale = scene.open();
    scene.append(shaft("2", "lost")).unwrap();
    let mut other = scene.open();
    other.undo(&stamp(1)).unwrap();
    // The same length as what the stale writer knows, and other content.
    let replaced = Scene::begun().lines()[0].replace("0000000000000001", "0000000000000002");
    let body = replaced.split(",\"crc\"").next().unwrap();
    let line = format!("{body},\"crc\":\"{:08x}\"}}\n", crc32fast::hash(body.as_bytes()));
    fs::write(&scene.path, line).unwrap();
    stale.append(shaft("3", "lost"), &stamp(5)).unwrap();
    assert_eq!(scene.open().state().records(), 2);
}

#[test]
fn a_journal_in_use_is_not_written_and_its_holder_is_named() {
    let scene = Scene::begun();
    let lock = File::create(scene.beside("lock")).unwrap();
    lock.lock().unwrap();
    fs::write(scene.beside("lock"), "4711\n").unwrap();
    let before = scene.bytes();
    let error = scene.append(shaft("2", "lost")).unwrap_err();
    assert!(matches!(error, JournalError::Busy { holder: Some(4711), .. }));
    assert_eq!(
        error.to_string(),
        format!("{} is in use by another program (process 4711)", scene.path.display())
    );
    assert_eq!(scene.bytes(), before);
    drop(lock);
    scene.append(shaft("2", "lost")).unwrap();
    let holder = fs::read_to_string(scene.beside("lock")).unwrap();
    assert_eq!(holder, format!("{}\n", std::process::id()));
}

#[test]
fn a_reader_makes_no_files() {
    let scene = Scene::begun();
    scene.open();
    assert_eq!(fs::read_dir(scene.folder.path()).unwrap().count(), 1);
}

/// Two names that lead to one journal share its lock.
#[cfg(unix)]
#[test]
fn a_journal_behind_a_link_is_locked_where_it_stands() {
    let scene = Scene::begun();
    let link = scene.folder.path().join("link.jsonl");
    std::os::unix::fs::symlink(&scene.path, &link).unwrap();
    let mut journal = quarterturn_journal::Journal::open(&link).unwrap();
    journal.append(Entry::End(end_of(&["R"])), &stamp(2)).unwrap();
    assert!(scene.beside("lock").exists() && scene.folder.path().read_dir().unwrap().count() == 3);
    assert_eq!(scene.open().state().records(), 2);
}
