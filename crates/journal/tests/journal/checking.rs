//! What a check proves, and that it changes nothing.

use quarterturn_journal::{Checked, JournalError};

use crate::scene::{Scene, long, text};

#[test]
fn a_whole_journal_is_counted() {
    let scene = Scene::with_five_records();
    let before = scene.bytes();
    let checked = Checked::of(&scene.path).unwrap();
    assert_eq!(checked.bytes, before.len() as u64);
    assert_eq!(checked.kinds, [("new", 1), ("end", 2), ("shaft", 1), ("undo", 1)]);
    assert_eq!((checked.records, checked.shots, checked.standing), (5, 5, 2));
    assert_eq!(checked.last.id.to_string(), "0000000000000007");
    assert_eq!((checked.torn, checked.earlier.len()), (None, 0));
    assert_eq!(scene.bytes(), before);
}

#[test]
fn a_torn_end_is_told_and_damage_is_named() {
    let whole = text(&long(10));
    let checked = Checked::of(&Scene::of(&[&whole[..], b"{\"v\""].concat()).path).unwrap();
    assert_eq!((checked.torn.unwrap().bytes, checked.bytes), (4, whole.len() as u64));
    let mut damaged = whole.clone();
    damaged[whole.len() / 2] ^= 1;
    let error = Checked::of(&Scene::of(&damaged).path).unwrap_err();
    assert!(matches!(error, JournalError::Damaged { line: 5..=6, .. }), "{error}");
}

#[test]
fn nothing_is_proved_of_an_empty_file() {
    let error = Checked::of(&Scene::of(b"").path).unwrap_err();
    assert!(matches!(error, JournalError::NotBegun { .. }), "{error}");
}
