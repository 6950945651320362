//! Groups of finished arrows: records of their own, which touch nothing of the bare shafts.

use quarterturn_geometry::Millimetres;
use quarterturn_journal::{
    BowEntry, Deed, Entry, GroupEntry, Journal, ShaftEntry, ShotEntry, What,
};
use quarterturn_tuning::{Head, Start};

use crate::scene::{Scene, end_of, stamp};

fn group(head: &str, shafts: &[&str]) -> GroupEntry {
    let hit = |shaft: &&str| ShotEntry {
        shaft: (*shaft).to_owned(),
        x_mm: Some(12.0),
        y_mm: Some(-3.0),
        ..ShotEntry::default()
    };
    let shots = shafts.iter().map(hit).collect();
    GroupEntry { distance_m: 27.4, head: head.into(), shots, ..GroupEntry::default() }
}

fn fletch(scene: &Scene, shaft: &str) {
    let change = "fletched".to_owned();
    let entry =
        ShaftEntry { shaft: shaft.to_owned(), change, index_deg: None, on: None, note: None };
    scene.append(Entry::Shaft(entry)).unwrap();
}

fn heads(journal: &Journal) -> Vec<String> {
    journal.state().groups().map(|group| group.head.to_string()).collect()
}

#[test]
fn a_group_is_kept_beside_the_history_and_can_be_undone() {
    let scene = Scene::begun();
    fletch(&scene, "1");
    let before = scene.open().state().history().clone();
    scene.append(Entry::Group(group("Field", &["1", "R"]))).unwrap();
    let cold = GroupEntry { cold: true, ..group("head A", &["1"]) };
    scene.append(Entry::Group(cold)).unwrap();
    let mut journal = scene.open();
    assert_eq!(heads(&journal), ["field", "head A"]);
    let last = journal.state().groups().last().unwrap();
    assert_eq!((&last.head, last.start), (&Head::Broadhead("head A".into()), Start::Cold));
    assert_eq!(last.distance, Millimetres::from_metres(27.4));
    assert_eq!(*journal.state().history(), before);
    let undone = journal.undo(&stamp(3)).unwrap();
    assert_eq!(undone.recalled, Some(Deed::Grouped { shots: 1 }));
    assert_eq!(
        (heads(&journal), heads(&scene.open())),
        (vec!["field".into()], vec!["field".into()])
    );
    journal.redo(&stamp(3)).unwrap();
    assert_eq!(heads(&journal), ["field", "head A"]);
    assert_eq!(heads(&scene.open()), ["field", "head A"]);
}

#[test]
fn what_was_shot_before_the_bow_was_changed_is_told_apart() {
    let scene = Scene::begun();
    scene.append(Entry::Group(group("field", &["R"]))).unwrap();
    let leave = BowEntry::Leave { leave: "tonight".into() };
    scene.append(Entry::Bow(leave)).unwrap();
    assert_eq!(scene.open().state().groups_beside_this_bow().count(), 1);
    let change = BowEntry::Change { note: "rest".into(), part: None, move_mm: None };
    scene.append(Entry::Bow(change)).unwrap();
    scene.append(Entry::End(end_of(&["R", "1"]))).unwrap();
    assert_eq!(scene.open().state().groups_beside_this_bow().count(), 0);
    scene.append(Entry::Group(group("head B", &["R"]))).unwrap();
    let journal = scene.open();
    let beside: Vec<_> = journal.state().groups_beside_this_bow().collect();
    assert_eq!((beside.len(), journal.state().groups().count()), (1, 2));
}

#[test]
fn what_is_not_fletched_or_cannot_be_is_refused() {
    let scene = Scene::begun();
    fletch(&scene, "1");
    let broken = ShaftEntry {
        shaft: "2".into(),
        change: "broken".into(),
        index_deg: None,
        on: None,
        note: None,
    };
    scene.append(Entry::Shaft(broken)).unwrap();
    let many = GroupEntry { cold: true, ..group("field", &["1", "R"]) };
    let far = GroupEntry { distance_m: 300.0, ..group("field", &["1"]) };
    for (entry, message) in [
        (
            group("head A", &["R", "3"]),
            "shots[1].shaft: 3 is not recorded as fletched: never a broadhead on a bare shaft",
        ),
        (group("field", &["3"]), "shots[0].shaft: 3 is not recorded as fletched"),
        (group("field", &["2"]), "shots[0].shaft: 2 is recorded as broken"),
        (group("field", &["77"]), "shots[0].shaft: there is no shaft \"77\" in this journal"),
        (group("field", &["1", "1"]), "shots[1].shaft: shaft 1 stands here twice"),
        (group("field", &[]), "shots: at least one is needed here"),
        (
            group(" ", &["1"]),
            "head: a head is \"field\" or a name of 1 to 40 characters on one line",
        ),
        (many, "cold: 2 shots cannot all be the first of the day"),
        (far, "distance_m: 300 m cannot be: more than 0 and at most 200 m"),
    ] {
        let before = scene.open().state().records();
        let refused = scene.append(Entry::Group(entry)).unwrap_err().to_string();
        assert_eq!(refused, message);
        assert_eq!(scene.open().state().records(), before);
    }
    let name = "3".parse().unwrap();
    let way_on = What::BroadheadOnBare { name }.way_on().unwrap();
    assert!(way_on.contains("--fletched"), "{way_on}");
}
