//! `shaft`: what became of a shaft.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

fn state(folder: &Folder, name: &str, change: &str) {
    folder.run(&format!("shaft {JOURNAL} {name} --{change}")).any_stdout().check();
}

fn is_scheduled(folder: &Folder, name: &str) -> bool {
    folder.next()["shots"].as_array().unwrap().iter().any(|shot| shot["shaft"] == name)
}

fn judged(folder: &Folder, shaft: usize) -> Value {
    folder.next()["shafts"][shaft].clone()
}

/// Three shafts and room for three: each is scheduled as long as it is in use.
fn three() -> Folder {
    Folder::begun("1-3")
}

#[test]
fn what_is_lost_broken_or_set_aside_is_retired_and_never_scheduled() {
    for (change, reason) in [("lost", "lost"), ("broken", "broken"), ("set-aside", "set aside")] {
        let folder = three();
        assert!(is_scheduled(&folder, "2"));
        state(&folder, "2", change);
        assert!(!is_scheduled(&folder, "2"), "{change}");
        let judged = judged(&folder, 1);
        assert_eq!(judged["verdict"], "retire");
        let said = judged["reason"].as_str().unwrap();
        assert!(said.starts_with(reason), "{said}");
    }
}

#[test]
fn what_broke_in_an_end_is_never_scheduled_either() {
    let folder = three();
    folder.enter(&json!({"shots": [
        {"shaft": "R", "x_mm": 0, "y_mm": 0},
        {"shaft": "2", "flags": ["broken"]},
    ]}));
    assert!(!is_scheduled(&folder, "2"));
    assert_eq!(judged(&folder, 1)["verdict"], "retire");
}

#[test]
fn a_shaft_taken_up_again_keeps_its_shots_and_a_repaired_one_starts_anew() {
    let folder = Folder::with_an_end();
    state(&folder, "1", "set-aside");
    state(&folder, "1", "readmit");
    assert_eq!(judged(&folder, 0)["verdict"], "open");
    assert_eq!(judged(&folder, 0)["shots_total"], 1);
    state(&folder, "1", "broken");
    state(&folder, "1", "repaired");
    assert_eq!(judged(&folder, 0)["verdict"], "open");
    assert_eq!(judged(&folder, 0)["shots_total"], 0);
}

#[test]
fn a_fletched_shaft_is_no_longer_scheduled() {
    let folder = three();
    state(&folder, "3", "fletched");
    assert!(!is_scheduled(&folder, "3"));
}

#[test]
fn without_a_reference_nothing_can_be_shot() {
    let folder = three();
    state(&folder, "R", "lost");
    let next = folder.next();
    assert_eq!(next["step"], "finished");
    assert!(next["why"].as_str().unwrap().contains("reference"), "{}", next["why"]);
}
