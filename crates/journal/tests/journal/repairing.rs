//! A damaged journal is mended whole or not at all; what can be read is kept, and the damaged one too.

use std::fs;
use std::path::Path;

use quarterturn_journal::{Checked, Damage, Entry, Finding, Journal, Repair};

use crate::scene::{Scene, end_of, long, sealed, shaft, stamp, text};
use crate::simulated::{Chance, Misfortune, SimulatedDisk};

/// Mends the journal of these lines, and returns what was found and its lines.
fn mended(lines: &[String]) -> (Repair, Vec<String>) {
    let scene = Scene::of(&text(lines));
    let before = scene.bytes();
    let planned = Repair::plan(&scene.path, &stamp(40)).unwrap();
    assert_eq!(scene.bytes(), before, "a plan changes nothing");
    assert_eq!(fs::read_dir(scene.folder.path()).unwrap().count(), 1);
    let repair = Repair::carry_out(&scene.path, &stamp(40)).unwrap();
    assert_eq!(repair, planned);
    let original = scene.beside("before-repair-1");
    if repair.findings.is_empty() {
        assert_eq!(scene.bytes(), before);
        assert!(!original.exists());
    } else {
        assert_eq!(repair.original, original);
        assert_eq!(fs::read(original).unwrap(), before);
    }
    assert_eq!(Checked::of(&scene.path).unwrap().records, repair.kept + repair.lost.len() as u64);
    (repair, scene.lines())
}

/// That everything but the first `same` lines says the same as before, linked anew.
fn says_the_same(line: &str, before: &str) {
    let said = |line: &str| line.split(",\"prev\"").next().unwrap().to_owned();
    assert_eq!(said(line), said(before));
}

#[test]
fn a_whole_journal_is_left_alone() {
    let lines = long(10);
    let (repair, left) = mended(&lines);
    assert_eq!((repair.findings, repair.kept, repair.lost), (vec![], 10, vec![]));
    assert_eq!(left, lines);
}

#[test]
fn a_damaged_line_keeps_its_place_and_the_others_their_words() {
    let lines = long(10);
    let mut damaged = lines.clone();
    damaged[4] = damaged[4].replace("\"x_mm\":5.5", "\"x_mm\":6.5");
    let (repair, left) = mended(&damaged);
    let damage = Finding::Damaged { line: 5, damage: Damage::Checksum };
    assert_eq!(repair.findings, [damage, Finding::Missing { from: 5, to: 5 }]);
    assert_eq!((repair.kept, repair.lost), (9, vec![5]));
    assert_eq!(left[..4], lines[..4]);
    let (id, name) = (r#""id":"000000000000002d""#, "dozen.jsonl.before-repair-1");
    assert!(left[4].contains(r#""kind":"unreadable""#) && left[4].contains(id), "{}", left[4]);
    assert!(left[4].contains(name), "{}", left[4]);
    for at in 5..10 {
        says_the_same(&left[at], &lines[at]);
    }
}

#[test]
fn moved_lines_come_back_to_their_places() {
    let lines = long(10);
    let mut swapped = lines.clone();
    swapped.swap(3, 7);
    let mut doubled = lines.clone();
    doubled.insert(6, lines[5].clone());
    let moved = |line, record| Finding::Moved { line, record };
    let twice = Finding::LeftOver { line: 7, record: 6 };
    for (damaged, findings) in [(swapped, vec![moved(5, 5), moved(4, 8)]), (doubled, vec![twice])] {
        let (repair, left) = mended(&damaged);
        assert_eq!((repair.findings, repair.kept, repair.lost), (findings, 10, vec![]));
        assert_eq!(left, lines);
    }
}

#[test]
fn a_line_of_another_journal_is_left_out() {
    let lines = long(10);
    let body = |line: &str| line.split(",\"crc\"").next().unwrap().to_owned();
    for at in [0, 6] {
        let mut inserted = lines.clone();
        inserted.insert(at, sealed(&body(&lines[at]).replace("\"id\":\"0", "\"id\":\"1")));
        let (repair, left) = mended(&inserted);
        let line = at as u64 + 1;
        assert_eq!(repair.findings, [Finding::LeftOver { line, record: line }]);
        assert_eq!((repair.kept, repair.lost), (10, vec![]));
        assert_eq!(left, lines);
    }
}

#[test]
fn a_line_that_was_exchanged_is_kept_and_told() {
    let mut lines = long(10);
    let body = lines[6].split(",\"crc\"").next().unwrap().replace("\"x_mm\":7.5", "\"x_mm\":9.5");
    lines[6] = sealed(&body);
    let (repair, left) = mended(&lines);
    assert_eq!(repair.findings, [Finding::Unlinked { line: 8, record: 8 }]);
    assert_eq!(left[6], lines[6]);
    says_the_same(&left[7], &lines[7]);
}

#[test]
fn what_says_what_cannot_be_gives_its_place_up() {
    let scene = Scene::with_five_records();
    let mut lines = scene.lines();
    // The undo of record 3 no longer is the undo of the last entry that stands.
    lines[2] = lines[2].replace("lost", "Lost");
    let (repair, left) = mended(&lines);
    assert_eq!(repair.lost, [3, 4]);
    assert!(left[3].contains("it says what cannot be: record 3 is not the last entry"));
    let state = Scene::of(&text(&left)).open().state().clone();
    assert_eq!(state.history().events.len(), 2);
}

#[test]
fn a_line_far_on_is_of_another_journal() {
    let lines = long(1200);
    for (cut, far) in [(2, true), (200, false)] {
        let damaged = [&lines[..cut], &lines[1100..]].concat();
        let (repair, left) = mended(&damaged);
        assert_eq!(left.len(), if far { cut } else { 1200 });
        assert_eq!(repair.findings.len(), if far { 100 } else { 1 });
    }
}

#[test]
fn a_torn_end_is_left_out_of_what_is_mended() {
    let mut damaged = text(&long(10));
    damaged[600] ^= 1;
    damaged.extend(b"{\"v\":1,");
    let scene = Scene::of(&damaged);
    let repair = Repair::carry_out(&scene.path, &stamp(40)).unwrap();
    assert_eq!(repair.torn.map(|torn| torn.bytes), Some(7));
    assert_eq!(scene.open().torn(), None);
    assert_eq!(fs::read(scene.beside("before-repair-1")).unwrap(), damaged);
}

/// Found by fuzzing: such a last line is damaged, and not torn.
#[test]
fn a_last_line_that_is_whole_but_no_record_is_mended() {
    let mut lines = long(3);
    lines.push(sealed("{\"v\":1,\"note\":\"\0\""));
    let (repair, left) = mended(&lines);
    assert_eq!((repair.findings.len(), repair.lost), (1, vec![4]));
    assert_eq!(left[..3], lines[..3]);
    assert!(left[3].contains(r#""why":"it cannot be read: "#), "{}", left[3]);
}

#[test]
fn a_changed_last_line_is_lost_and_keeps_its_place() {
    let lines = long(5);
    let mut damaged = lines.clone();
    damaged[4] = damaged[4].replace("5.5", "6.5");
    let (repair, left) = mended(&damaged);
    assert_eq!(repair.findings, [Finding::Damaged { line: 5, damage: Damage::Checksum }]);
    assert_eq!((repair.kept, repair.lost, repair.torn), (4, vec![5], None));
    assert_eq!(left[..4], lines[..4]);
}

#[test]
fn an_end_without_a_line_feed_is_torn_as_long_as_a_record_may_be() {
    let mut damaged = text(&long(5));
    damaged[600] ^= 1;
    for (bytes, torn) in [(65_536, true), (65_537, false)] {
        let scene = Scene::of(&[&damaged[..], &vec![b'x'; bytes]].concat());
        let repair = Repair::plan(&scene.path, &stamp(40)).unwrap();
        assert_eq!(repair.torn.map(|torn| torn.bytes), torn.then_some(bytes as u64));
        let too_long = Finding::Damaged { line: 6, damage: Damage::TooLong };
        assert_eq!(repair.findings.contains(&too_long), !torn);
    }
}

#[test]
fn what_cannot_be_mended_is_left_as_it_is() {
    let lines = long(3);
    let changed = |at: usize, from: &str, to: &str| {
        let mut lines = lines.clone();
        lines[at] = lines[at].replace(from, to);
        lines
    };
    let newer = |at: usize, from: &str, to: &str| {
        let mut lines = lines.clone();
        lines[at] = sealed(&lines[at].split(",\"crc\"").next().unwrap().replace(from, to));
        lines
    };
    let cases = [
        (
            changed(0, "new", "New"),
            "cannot be mended: the record that says how it was begun is lost",
        ),
        (lines[1..].to_vec(), "cannot be mended: the record that says how it was begun is lost"),
        (
            newer(1, "{\"v\":1", "{\"v\":2"),
            "is not mended: it has format 2, and this program reads format 1",
        ),
        (
            newer(2, "\"end\"", "\"dream\""),
            "is not mended: it is of a kind that this program does not know: \"dream\"",
        ),
    ];
    for (lines, expected) in cases {
        let scene = Scene::of(&text(&lines));
        let before = scene.bytes();
        let error = Repair::carry_out(&scene.path, &stamp(40)).unwrap_err();
        assert_eq!(error.to_string(), format!("{} {expected}", scene.path.display()));
        assert!(error.way_on().is_some());
        assert_eq!(scene.bytes(), before);
    }
}

#[test]
fn a_mended_journal_goes_on() {
    let mut lines = long(10);
    lines.remove(4);
    let scene = Scene::of(&text(&lines));
    Repair::carry_out(&scene.path, &stamp(40)).unwrap();
    let confirmed = scene.append(Entry::End(end_of(&["R", "1"]))).unwrap();
    assert_eq!(confirmed.record.seq, 11);
    scene.append(shaft("1", "lost")).unwrap();
    scene.open().undo(&stamp(41)).unwrap();
    assert_eq!(Checked::of(&scene.path).unwrap().kinds[2], ("unreadable", 1));
}

/// Power cuts and errors at every step: the journal is what it was or what it should be.
#[test]
fn a_repair_is_done_or_not() {
    let path = Path::new("dozen.jsonl");
    let mut lines = long(10);
    lines.remove(4);
    let damaged = text(&lines);
    let disk = || {
        let disk = SimulatedDisk::new(5);
        disk.put(path, &damaged);
        disk
    };
    let whole = disk();
    Repair::carry_out_on(&whole, path, &stamp(40)).unwrap();
    let (steps, mended) = (whole.steps(), whole.bytes(path).unwrap());
    let mut chance = Chance::of(1);
    for step in 0..steps {
        for misfortune in [Misfortune::PowerCut, Misfortune::Fails(std::io::ErrorKind::StorageFull)]
        {
            for _ in 0..20 {
                let disk = disk();
                disk.plan(step, misfortune);
                let done = Repair::carry_out_on(&disk, path, &stamp(40)).is_ok();
                let disk = disk.after_power_cut(chance.bits());
                let found = disk.bytes(path).unwrap();
                assert!(found == mended || (!done && found == damaged), "step {step}");
                let original = disk.bytes(Path::new("dozen.jsonl.before-repair-1"));
                assert!(found == damaged || original == Some(damaged.clone()), "step {step}");
                Repair::carry_out_on(&disk, path, &stamp(40)).unwrap();
                Journal::open_on(disk, path).unwrap();
            }
        }
    }
}
