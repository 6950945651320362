//! The quiver: heads on arrows, the order, limits, and what happens to arrows over a season.

use std::collections::BTreeMap;

use quarterturn_geometry::Index;
use quarterturn_journal::{
    BowEntry, Deed, Entry, GroupEntry, Journal, Limits, Log, MountedHead, Quiver, QuiverArrow,
    QuiverEntry, ShaftEntry, read_group,
};
use quarterturn_tuning::ShaftState;

use crate::scene::{Scene, end_of, shaft, shot, stamp};

fn fletched(name: &str, index_deg: f64) -> Entry {
    let change = "fletched".to_owned();
    let index_deg = Some(index_deg);
    Entry::Shaft(ShaftEntry { shaft: name.into(), change, index_deg, on: None, note: None })
}

fn on(name: &str, change: &str, day: &str) -> Entry {
    let (change, on) = (change.to_owned(), Some(day.to_owned()));
    Entry::Shaft(ShaftEntry { shaft: name.into(), change, index_deg: None, on, note: None })
}

fn head(arrow: &str, carries: &str) -> Entry {
    let (shaft, carries) = (arrow.to_owned(), carries.to_owned());
    let mass_gr = Some(100.2);
    Entry::Quiver(QuiverEntry::Head(MountedHead {
        shaft,
        carries,
        mass_gr,
        ..MountedHead::default()
    }))
}

fn group(head: &str, shafts: &[&str]) -> Entry {
    let shots = shafts.iter().map(|name| shot(name)).collect();
    Entry::Group(GroupEntry { distance_m: 27.0, head: head.into(), shots, ..GroupEntry::default() })
}

fn order(names: &[&str]) -> Entry {
    let order = names.iter().map(|name| (*name).to_owned()).collect();
    Entry::Quiver(QuiverEntry::Order { order })
}

fn quiver(journal: &Journal) -> Quiver {
    Quiver::of(&Log::of(journal.records().unwrap()))
}

fn arrow(quiver: &Quiver, name: &str) -> QuiverArrow {
    quiver.arrows.iter().find(|arrow| arrow.name == name).unwrap().clone()
}

/// Shafts 1 and 2 fletched, 1 with its mark at 4 o'clock.
fn two_arrows() -> Scene {
    let scene = Scene::begun();
    scene.append(Entry::End(end_of(&["R", "1", "2"]))).unwrap();
    scene.append(fletched("1", 120.0)).unwrap();
    scene.append(shaft("2", "fletched")).unwrap();
    scene
}

#[test]
fn a_fletched_shaft_has_its_mark_where_it_was_fletched() {
    let scene = two_arrows();
    let state = scene.open().state().clone();
    let standing = |name: &str| state.roster().find(&name.parse().unwrap()).unwrap().clone();
    let one = standing("1");
    assert_eq!(
        (one.state, one.index_now, one.turns),
        (ShaftState::Fletched, Index::from_hour(4.0), 1)
    );
    assert_eq!(
        (standing("2").state, standing("2").index_now),
        (ShaftState::Fletched, Index::TWELVE)
    );
    let again = scene.append(fletched("1", 0.0)).unwrap_err().to_string();
    assert_eq!(again, "change: 1 is fletched: this change cannot follow");
    scene.append(shaft("1", "new-nock")).unwrap();
    let journal = scene.open();
    let renewed = journal.state().roster().find(&"1".parse().unwrap()).unwrap();
    assert_eq!((renewed.turns, renewed.state), (0, ShaftState::Fletched));
}

#[test]
fn a_group_keeps_which_head_was_on_which_arrow() {
    let scene = two_arrows();
    scene.append(head("1", "A")).unwrap();
    scene.append(head("2", "B")).unwrap();
    scene.append(group("fixed", &["1", "2"])).unwrap();
    // A goes onto the other arrow, B off it.
    scene.append(head("2", "A")).unwrap();
    scene.append(group("fixed", &["1", "2"])).unwrap();
    scene.append(group("field", &["1", "2"])).unwrap();
    let journal = scene.open();
    let mounted: Vec<Vec<String>> = journal
        .state()
        .groups()
        .map(|group| group.mounted.iter().map(|(arrow, head)| format!("{arrow} {head}")).collect())
        .collect();
    assert_eq!(mounted, [vec!["1 A", "2 B"], vec!["2 A"], vec![]]);
    let quiver = quiver(&journal);
    assert_eq!(arrow(&quiver, "1").head, None);
    assert_eq!(arrow(&quiver, "2").head, quiver.head("A").cloned());
}

#[test]
fn a_season_counts_shots_and_what_no_check_followed() {
    let scene = two_arrows();
    for entry in [
        on("1", "checked", "2027-08-30"),
        group("field", &["1", "2"]),
        on("1", "hard-hit", "2027-09-01"),
        on("2", "new-nock", "2027-09-01"),
        group("fixed", &["1"]),
        on("2", "checked", "2027-09-02"),
        order(&["2", "1"]),
    ] {
        scene.append(entry).unwrap();
    }
    let mut journal = scene.open();
    let told = quiver(&journal);
    assert_eq!((told.order.clone(), told.ends, told.groups), (vec!["2".into(), "1".into()], 1, 2));
    let one = arrow(&told, "1");
    assert_eq!((one.shots_in_ends, one.shots_in_groups, one.shots_since_check), (1, 2, 2));
    assert_eq!(one.checked_on.as_deref(), Some("2027-08-30"));
    assert_eq!(one.hard_hit_on.as_deref(), Some("2027-09-01"));
    let two = arrow(&told, "2");
    assert_eq!((two.new_nock_on, two.shots_since_check), (None, 0));
    journal.undo(&stamp(9)).unwrap();
    assert_eq!(quiver(&journal).order, Vec::<String>::new());
    let string =
        BowEntry::Change { note: "new".into(), part: Some("string".into()), move_mm: None };
    scene.append(Entry::Bow(string)).unwrap();
    assert_eq!(quiver(&scene.open()).new_string_on.as_deref(), Some("2027-03-02"));
    scene.append(group("field", &["1"])).unwrap();
    assert_eq!(quiver(&scene.open()).new_string_on, None);
}

#[test]
fn what_is_said_of_the_quiver_can_be_taken_back_and_brought_back() {
    let scene = two_arrows();
    scene.append(head("1", "A")).unwrap();
    let mut journal = scene.open();
    assert_eq!(journal.undo(&stamp(3)).unwrap().recalled, Some(Deed::Quivered));
    scene.append(group("fixed", &["1"])).unwrap();
    assert_eq!(scene.open().state().groups().last().unwrap().mounted, BTreeMap::new());
    let mut journal = scene.open();
    journal.undo(&stamp(4)).unwrap();
    journal.redo(&stamp(5)).unwrap();
    assert_eq!(scene.open().state().groups().count(), 1);
}

#[test]
fn what_cannot_be_is_refused() {
    let scene = two_arrows();
    scene.append(on("2", "broken", "2027-09-01")).unwrap();
    let limits = |read_on: &str, least_arrow_gr| {
        let read_on = read_on.to_owned();
        Entry::Quiver(QuiverEntry::Limits(Limits { read_on, least_arrow_gr, ..Limits::default() }))
    };
    for (entry, message) in [
        (head("3", "A"), "shaft: 3 is not recorded as fletched: never a broadhead on a bare shaft"),
        (head("2", "A"), "shaft: 2 is recorded as broken"),
        (head("7", "A"), "shaft: there is no shaft \"7\" in this journal"),
        (
            head("1", " "),
            "carries: a head is \"field\" or a name of 1 to 40 characters on one line",
        ),
        (order(&[]), "order: at least one is needed here"),
        (order(&["1", "1"]), "order[1]: shaft 1 stands here twice"),
        (order(&["1", "3"]), "order[1]: 3 is not recorded as fletched"),
        (limits("someday", Some(300.0)), "read_on: \"someday\" is not a day"),
        (limits("30.7.2027", Some(300.0)), "read_on: \"30.7.2027\" is not a day"),
        (limits("2027-07-30", None), "there is no limit here"),
        (
            limits("2027-07-30", Some(-1.0)),
            "least_arrow_gr: -1 gr cannot be: more than 0 and at most 5000 gr",
        ),
        (on("1", "checked", "yesterday"), "on: \"yesterday\" is not a day"),
        (shaft("2", "checked"), "change: 2 is broken: this change cannot follow"),
    ] {
        let before = scene.bytes();
        assert_eq!(scene.append(entry).unwrap_err().to_string(), message);
        assert_eq!(scene.bytes(), before);
    }
}

#[test]
fn a_group_is_read_from_json_with_every_fault_in_its_place() {
    let text = r#"{"distance_m":27,"head":"fixed","cold":true,"mounted":{"1":"C"},
        "shots":[{"shaft":"1","x_mm":3,"y_mm":-2}]}"#;
    let scene = two_arrows();
    scene.append(Entry::Group(read_group(text).unwrap())).unwrap();
    let journal = scene.open();
    let group = journal.state().groups().last().unwrap();
    assert_eq!(group.mounted[&"1".parse().unwrap()], "C");
    let faults = |text: &str| {
        let faults = read_group(text).unwrap_err();
        faults.iter().map(ToString::to_string).collect::<Vec<_>>()
    };
    assert_eq!(
        faults(r#"{"head":3,"cold":"yes","mounted":{"1":7},"shots":[{"x_mm":1}]}"#),
        [
            "shots[0]: \"shaft\" is missing",
            "\"distance_m\" is missing",
            "head: text in quotes is expected here, not a number",
            "cold: true or false is expected here, not text in quotes",
            "mounted.1: text in quotes is expected here, not a number",
        ]
    );
    let unknown = r#"{"distance_m":27,"head":"fixed","mounted":{"9":"C"},"shots":[{"shaft":"1","x_mm":3,"y_mm":-2}]}"#;
    let refused = scene.append(Entry::Group(read_group(unknown).unwrap())).unwrap_err();
    assert_eq!(refused.to_string(), "mounted: there is no shaft \"9\" in this journal");
}
