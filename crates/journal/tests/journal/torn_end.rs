//! A cut end is left out, said, and kept aside; nothing before it is lost.

use std::fs::{self, File};

use quarterturn_journal::{Entry, Journal, JournalError};

use crate::scene::{Scene, end_of, long, text};

/// Where the records of a journal end, in bytes.
fn ends(bytes: &[u8]) -> Vec<usize> {
    bytes.iter().enumerate().filter(|(_, byte)| **byte == b'\n').map(|(at, _)| at + 1).collect()
}

#[test]
fn every_length_of_a_cut_journal_gives_its_whole_records() {
    let scene = Scene::with_five_records();
    let ends = ends(&scene.bytes());
    let file = File::options().write(true).open(&scene.path).unwrap();
    for length in (0..=scene.bytes().len()).rev() {
        file.set_len(length as u64).unwrap();
        let whole: Vec<_> = ends.iter().filter(|end| **end <= length).collect();
        match (Journal::open(&scene.path), whole.last()) {
            (Ok(journal), Some(end)) => {
                assert_eq!(journal.state().records(), whole.len() as u64);
                let torn = journal.torn().map_or(0, |torn| torn.bytes);
                assert_eq!(torn, (length - **end) as u64);
            }
            (Err(JournalError::NotBegun { .. }), None) => {}
            _ => panic!("{length} bytes"),
        }
    }
}

#[test]
fn an_append_keeps_what_is_whole_and_sets_aside_what_is_torn() {
    let whole = Scene::with_five_records().bytes();
    let ends = ends(&whole);
    for (records, pair) in (1..).zip(ends.windows(2)) {
        let [end, next] = *pair else { panic!("two ends follow each other") };
        for torn in [0, 1, (next - end) / 2, next - end - 1] {
            let cut = &whole[..end + torn];
            let scene = Scene::of(cut);
            let confirmed = scene.append(Entry::End(end_of(&["R"]))).unwrap();
            assert_eq!(confirmed.record.seq, records + 1);
            let kept = confirmed.torn_kept.map_or(Vec::new(), |kept| fs::read(kept).unwrap());
            assert_eq!(kept, cut[end..]);
            assert!(scene.bytes().starts_with(&whole[..end]));
            let journal = scene.open();
            assert_eq!(journal.state().records(), records + 1);
            assert_eq!(journal.torn(), None);
        }
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

/// A disk that wrote the last sector of a line and not those before it leaves zeros and a line feed.
#[test]
fn half_a_last_line_is_torn_even_where_its_line_feed_was_written() {
    let lines = long(3);
    let whole = text(&lines[..2]);
    let last = lines[2].as_bytes();
    let mut zeros = last.to_vec();
    zeros[..300].fill(0);
    for half in [&last[..100], &last[..last.len() - 1], &zeros] {
        let scene = Scene::of(&[&whole[..], half, b"\n"].concat());
        assert_eq!(scene.open().torn().unwrap().bytes, half.len() as u64 + 1);
        let confirmed = scene.append(Entry::End(end_of(&["R"]))).unwrap();
        assert_eq!(confirmed.record.seq, 3);
        let kept = fs::read(confirmed.torn_kept.unwrap()).unwrap();
        assert_eq!(kept, [half, b"\n"].concat());
        assert!(scene.bytes().starts_with(&whole));
        assert_eq!(scene.open().torn(), None);
    }
}

/// It was confirmed: that it is no longer what it was must not pass as a cut.
#[test]
fn a_last_line_that_was_changed_is_damaged_and_not_torn() {
    let lines = long(3);
    let changed = [&lines[..2], &[lines[2].replace("3.5", "4.5")]].concat();
    let cases =
        [text(&changed), [&text(&lines[..2])[..], &lines[2].as_bytes()[20..], b"\n"].concat()];
    for bytes in cases {
        let error = Journal::open(&Scene::of(&bytes).path).err().unwrap();
        assert!(matches!(error, JournalError::Damaged { line: 3, .. }), "{error}");
    }
}

#[test]
fn half_a_line_before_others_is_damage() {
    let mut lines = long(4);
    lines[2].truncate(100);
    let error = Journal::open(&Scene::of(&text(&lines)).path).err().unwrap();
    assert!(matches!(error, JournalError::Damaged { line: 3, .. }), "{error}");
}
