//! `cut`: what comes off which end, and whether more than one may be cut yet.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

const CUT: &str = "--to 724mm --kerf 1.2mm";

/// 1 is crooked at the point, 2 at the nock, 3 was not rolled, 4 hardly too long, 5 just right, 6 too short, 7 not measured.
fn raw() -> Folder {
    let folder = Folder::begun("1-7");
    for measures in [
        "1 --length 754mm --straight-point 0.2mm --straight-nock 0.05mm",
        "2 --length 754mm --straight-point 0.05mm --straight-nock 0.2mm",
        "3 --length 754mm",
        "4 --length 725mm",
        "5 --length 724.2mm",
        "6 --length 700mm",
    ] {
        folder.run(&format!("bench {JOURNAL} {measures}")).any_stdout().check();
    }
    folder
}

/// What it answers other programs.
pub fn answer() -> Value {
    raw().run(&format!("cut {JOURNAL} --json {CUT}")).json()
}

#[test]
fn each_shaft_has_its_end_and_its_stop() {
    let folder = raw();
    let screen = folder.run(&format!("cut {JOURNAL} {CUT}")).any_stdout().check();
    assert!(screen.lines().all(|line| line.chars().count() <= 80), "{screen}");
    let said = screen.split_whitespace().collect::<Vec<_>>().join(" ");
    for part in [
        "To 724.0 mm, with a cut 1.2 mm wide and 0.3 mm left on for squaring: 4 shafts.",
        "1 754.0 30.0 28.5 - - 2 754.0 - - 30.0 28.5 3 754.0 15.0 13.5 15.0 13.5 4 725.0 1.0 squared - -",
        "Ends: the ends of 3 and 4 were not measured",
        "First: cut one, fit it, shoot it bare",
        "Cut already: 5.",
        "Too short: 6 (700.0 mm).",
        "Length not known: 7.",
        "Caution: Carbon dust",
    ] {
        assert!(said.contains(part), "{part} in\n{screen}");
    }
    let answer = answer();
    assert_eq!(answer["cut"][0]["point"], json!({"off_mm": 30.0, "stop_mm": 28.5}));
    assert_eq!((&answer["cut"][0].get("nock"), &answer["gate"]), (&None, &json!("cut one")));
}

/// One is cut, then shot, and only then the rest follows.
#[test]
fn one_is_cut_and_shot_before_the_rest() {
    let folder = raw();
    let asked = || {
        let answer = folder.run(&format!("cut {JOURNAL} --json {CUT}")).json();
        (answer["gate"].clone(), answer["gate_shafts"].clone())
    };
    folder.run(&format!("bench {JOURNAL} 1 --cut-point 30mm --length 724mm")).any_stdout().check();
    assert_eq!(asked(), (json!("shoot it"), json!(["1"])));
    let said = folder.run(&format!("cut {JOURNAL} {CUT}"));
    said.stdout_has("First: cut and not shot yet: 1. Shoot it bare before you cut the rest.")
        .check();
    folder.enter(&json!({"shots": [{"shaft": "R", "x_mm": 0, "y_mm": 0}, {"shaft": "1", "x_mm": 3, "y_mm": 0}]}));
    assert_eq!(asked(), (json!("cut the rest"), json!(["1"])));
    folder
        .run(&format!("cut {JOURNAL} {CUT}"))
        .stdout_has("cut and shot: 1. Cut the rest.")
        .check();
}
