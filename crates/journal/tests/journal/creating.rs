//! A journal is begun once, whole, and never over a file.

use std::fs;

use quarterturn_journal::{FaceUnit, Journal, JournalError, NewEntry, NewShaft};
use quarterturn_tuning::{Matching, Policy};

use crate::scene::{Scene, beginning, stamp};

fn refusal(change: impl Fn(&mut NewEntry)) -> String {
    let scene = Scene::empty();
    let mut entry = beginning();
    change(&mut entry);
    let error = Journal::create(&scene.path, entry, &stamp(1)).err().unwrap();
    assert!(!scene.path.exists());
    error.to_string()
}

#[test]
fn the_first_record_says_how_it_was_begun() {
    let scene = Scene::begun();
    assert_eq!(
        scene.lines(),
        [concat!(
            r#"{"v":1,"seq":1,"id":"0000000000000001","t":"2027-03-02T10:15:00+01:00","kind":"new","#,
            r#""data":{"shafts":[{"name":"1","index_deg":0.0},{"name":"2","index_deg":0.0},"#,
            r#"{"name":"3","index_deg":0.0}],"references":["R"],"distance_m":18.3,"#,
            r#""tolerance_mm":25.0,"units":"mm","arrows_per_end":4,"positions":12},"#,
            r#""prev":"00000000","crc":"adcebfbb"}"#
        )]
    );
    let state = scene.open().state().clone();
    assert_eq!(state.records(), 1);
    assert_eq!(state.unit(), FaceUnit::Millimetres);
    assert_eq!(state.beginning(), &beginning());
    assert_eq!(state.history().events.last(), None);
    assert!(state.evenings().is_empty());
}

#[test]
fn a_file_that_exists_is_not_touched() {
    let scene = Scene::of(b"letters to my aunt");
    let error = Journal::create(&scene.path, beginning(), &stamp(1)).err().unwrap();
    assert!(matches!(error, JournalError::Exists { .. }));
    assert_eq!(scene.bytes(), b"letters to my aunt");
}

#[test]
fn a_folder_that_does_not_exist_is_named() {
    let scene = Scene::empty();
    let path = scene.folder.path().join("nowhere").join("dozen.jsonl");
    let error = Journal::create(&path, beginning(), &stamp(1)).err().unwrap();
    let what = format!("nothing was recorded: could not write to {}: ", path.display());
    assert!(error.to_string().starts_with(&what), "{error}");
    assert_eq!(error.way_on(), Some("make the folder first, or check its name"));
}

#[test]
fn only_the_journal_is_made() {
    let scene = Scene::begun();
    assert_eq!(fs::read_dir(scene.folder.path()).unwrap().count(), 1);
}

#[test]
fn an_impossible_beginning_is_refused() {
    let cases = [
        (refusal(|e| e.shafts.clear()), "shafts: at least one is needed here"),
        (refusal(|e| e.references.clear()), "references: at least one is needed here"),
        (refusal(|e| e.references.push("2".into())), "references[1]: shaft 2 stands here twice"),
        (
            refusal(|e| e.shafts[1].name = "a b".into()),
            "shafts[1].name: \"a b\" cannot name a shaft",
        ),
        (
            refusal(|e| e.shafts[2].index_deg = f64::NAN),
            "shafts[2].index_deg: this is not a finite number",
        ),
        (
            refusal(|e| e.distance_m = 0.0),
            "distance_m: 0 m cannot be: more than 0 and at most 200 m",
        ),
        (
            refusal(|e| e.tolerance_mm = -25.0),
            "tolerance_mm: -25 mm cannot be: more than 0 and at most 3000 mm",
        ),
        (refusal(|e| e.units = "ell".into()), "units: \"ell\" is not known here"),
        (refusal(|e| e.arrows_per_end = 0), "arrows_per_end: 0 cannot be: from 2 to 60"),
        (refusal(|e| e.aim = Some("sky".into())), "aim: \"sky\" is not known here"),
        (
            refusal(|e| e.shots_per_evening = Some(0)),
            "shots_per_evening: 0 cannot be: from 1 to 500",
        ),
        (refusal(|e| e.turns_per_nock = Some(101)), "turns_per_nock: 101 cannot be: from 1 to 100"),
        (refusal(|e| e.shafts = numbered(73)), "shafts: 73 shafts: a journal serves at most 72"),
        (
            refusal(|e| e.positions = 0),
            "positions: 0 positions: a nock can be set to 1 to 72 evenly spaced positions",
        ),
        (
            refusal(|e| e.bare_lighter_gr = Some(20.0)),
            "bare_lighter_gr: this says nothing without \"arrow_gr\"",
        ),
    ];
    for (said, expected) in cases {
        assert_eq!(said, expected);
    }
}

fn numbered(count: usize) -> Vec<NewShaft> {
    (1..=count).map(|n| NewShaft { name: n.to_string(), index_deg: 0.0 }).collect()
}

#[test]
fn what_is_left_out_of_the_first_record_is_the_reference_and_the_usual_limits() {
    let state = Scene::begun().open().state().clone();
    assert_eq!(state.history().setup.matching, Matching::Reference);
    assert_eq!(state.policy(), &Policy::default());
}

#[test]
fn an_aim_and_limits_are_kept() {
    let (aim, shots_per_evening) = (Some("set".to_owned()), Some(24));
    let scene = Scene::empty();
    let entry = NewEntry { aim, shots_per_evening, turns_per_nock: Some(6), ..beginning() };
    Journal::create(&scene.path, entry, &stamp(1)).unwrap();
    let state = scene.open().state().clone();
    assert_eq!(state.history().setup.matching, Matching::Set);
    assert_eq!((state.policy().evening_shots, state.policy().nock_turns), (24, 6));
}

#[test]
fn indices_lose_their_whole_turns() {
    let scene = Scene::empty();
    let mut entry = beginning();
    entry.shafts[0].index_deg = -30.0;
    entry.shafts[1].index_deg = -270.0;
    entry.shafts[2].index_deg = -0.0;
    let journal = Journal::create(&scene.path, entry, &stamp(1)).unwrap();
    let indices: Vec<_> =
        journal.state().beginning().shafts.iter().map(|shaft| shaft.index_deg.to_bits()).collect();
    assert_eq!(indices, [330.0, 90.0, 0.0].map(f64::to_bits));
}
