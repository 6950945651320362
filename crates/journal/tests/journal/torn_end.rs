//! A cut end is left out, said, and kept aside; nothing before it is lost.

use std::fs;

use quarterturn_journal::{Entry, Journal, JournalError};

use crate::scene::{Scene, end_of, stamp};

#[test]
fn every_length_of_a_cut_journal_gives_its_whole_records() {
    let whole = Scene::with_five_records().bytes();
    let ends: Vec<usize> =
        whole.iter().enumerate().filter(|(_, b)| **b == b'\n').map(|(n, _)| n + 1).collect();
    for length in 0..=whole.len() {
        let scene = Scene::of(&whole[..length]);
        let records = ends.iter().filter(|end| **end <= length).count();
        let Ok(mut journal) = Journal::open(&scene.path) else {
            assert_eq!(records, 0, "{length} bytes");
            continue;
        };
        assert_eq!(journal.state().records(), records as u64);
        let torn = length - ends[records - 1];
        assert_eq!(journal.torn().map_or(0, |torn| torn.bytes), torn as u64);

        let confirmed = journal.append(Entry::End(end_of(&["R"])), &stamp(9)).unwrap();
        assert_eq!(confirmed.record.seq, records as u64 + 1);
        assert_eq!(journal.torn(), None);
        let kept = confirmed.torn_kept.map_or(Vec::new(), |kept| fs::read(kept).unwrap());
        assert_eq!(kept, whole[length - torn..length]);
        assert!(scene.bytes().starts_with(&whole[..length - torn]));
        assert_eq!(scene.open().state().records(), records as u64 + 1);
    }
}

#[test]
fn a_cut_end_is_said_with_its_bytes() {
    let scene = Scene::of(&[&Scene::begun().bytes()[..], b"{\"v\":1,"].concat());
    let torn = scene.open().torn().unwrap();
    assert_eq!(torn.to_string(), "the last 7 bytes are not a whole record and are left out");
}

#[test]
fn a_journal_whose_first_record_is_cut_was_not_begun() {
    for bytes in [&b""[..], b"{\"v\":1,"] {
        let scene = Scene::of(bytes);
        let error = Journal::open(&scene.path).err().unwrap();
        assert!(matches!(error, JournalError::NotBegun { .. }), "{error}");
    }
}

#[test]
fn an_earlier_torn_end_is_not_overwritten() {
    let scene = Scene::begun();
    for torn in ["first", "second"] {
        let bytes = [scene.bytes(), torn.as_bytes().to_vec()].concat();
        fs::write(&scene.path, bytes).unwrap();
        scene.append(Entry::End(end_of(&["R"]))).unwrap();
    }
    assert_eq!(fs::read(scene.beside("torn-1")).unwrap(), b"first");
    assert_eq!(fs::read(scene.beside("torn-2")).unwrap(), b"second");
    assert_eq!(scene.open().state().records(), 3);
}

#[test]
fn a_refused_entry_leaves_a_torn_end_alone() {
    let scene = Scene::of(&[&Scene::begun().bytes()[..], b"torn"].concat());
    let before = scene.bytes();
    scene.append(Entry::End(end_of(&["9"]))).unwrap_err();
    assert_eq!(scene.bytes(), before);
    assert!(!scene.beside("torn-1").exists());
}
