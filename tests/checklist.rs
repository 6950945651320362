//! `checklist`: every stage from raw shaft to quiver, and what to look at on what was retired.

use serde_json::{Value, json};

use crate::fletch;
use crate::support::{Folder, JOURNAL};

/// Before anything was done, and with a shaft that is broken and one that is fletched.
pub fn answers() -> Vec<Value> {
    let folder = finished();
    folder.run(&format!("shaft {JOURNAL} 2 --broken")).any_stdout().check();
    [Folder::begun("1-3"), folder].map(|folder| asked(&folder)).to_vec()
}

/// Shaft 1 is kept and fletched.
fn finished() -> Folder {
    let folder = fletch::found();
    folder.run(&format!("shaft {JOURNAL} 1 --fletched")).any_stdout().check();
    folder
}

fn asked(folder: &Folder) -> Value {
    folder.run(&format!("checklist {JOURNAL} --json")).json()
}

/// How a stage stands, and who lacks it.
fn stands(answer: &Value, stage: &str) -> (String, Value) {
    let stages = answer["stages"].as_array().unwrap();
    let found = stages.iter().find(|one| one["stage"] == stage).unwrap();
    (found["stands"].as_str().unwrap().to_owned(), found["missing"].clone())
}

#[test]
fn a_journal_that_is_just_begun_lacks_everything() {
    let folder = Folder::begun("1-3");
    let screen = folder.run(&format!("checklist {JOURNAL}")).any_stdout().check();
    assert!(screen.lines().all(|line| line.chars().count() <= 80), "{screen}");
    for line in [
        " 1  missing  number and weigh the shafts: all 3",
        " 4  missing  cut to length: cut one, shoot it bare, then cut the rest",
        "11  by hand  flex test and nocks: every shaft, every evening",
        "12  missing  bow and archer ready: 0 of 2 ends with a reference",
        "16  later    fletch those to keep: none is to keep yet",
        "Now 1: number and weigh the shafts.",
        "Then: quarterturn bench evening.journal",
    ] {
        assert!(screen.lines().any(|shown| shown == line), "{line} in\n{screen}");
    }
    assert!(
        screen.contains("Carbon dust") && screen.contains("Flex and twist every shaft"),
        "{screen}"
    );
}

#[test]
fn what_was_measured_and_glued_is_done() {
    let folder = Folder::begun("1-3");
    let run = |line: &str| folder.run(&line.replace('J', JOURNAL)).any_stdout().check();
    for shaft in 1..=3 {
        let spine =
            "--spine 0=0.5,90=0.51,180=0.5,270=0.51 --straight-point 0.05mm --straight-nock 0.1mm";
        let rest = "--square 0mm --wobble 0.1mm --bare-mass 405gr --cut-point 12mm --length 724mm";
        run(&format!("bench J {shaft} --mass 312gr {spine} {rest}"));
    }
    run("bench J R --finished-mass 428gr");
    run("glue J 1-2 --cure 24h --at 2026-02-26T19:00:00Z");
    let answer = asked(&folder);
    for stage in ["weigh", "straightness", "sides", "cut", "square", "insert", "tape", "reference"]
    {
        assert_eq!(stands(&answer, stage), ("done".into(), json!([])), "{stage}");
    }
    assert_eq!(stands(&answer, "glue"), ("missing".into(), json!(["3"])));
    assert_eq!(answer["now"], "glue");
    run("glue J 3 --cure 28d");
    let said = run("checklist J");
    assert!(said.contains("glue the inserts and let them cure: 3, not before 20"), "{said}");
    assert!(said.ends_with("Then: quarterturn glue evening.journal\n"), "{said}");
}

#[test]
fn what_was_shot_without_the_bench_is_passed() {
    let folder = finished();
    folder.enter(&json!({"shots": [{"shaft": "R", "x_mm": 0, "y_mm": 0}, {"shaft": "2", "x_mm": 3, "y_mm": 0}]}));
    let answer = asked(&folder);
    assert_eq!(stands(&answer, "weigh"), ("passed".into(), json!(["2"])));
    assert_eq!(stands(&answer, "bow").0, "done");
    assert_eq!(stands(&answer, "turn"), ("missing".into(), json!(["2"])));
    assert_eq!(stands(&answer, "cure"), ("missing".into(), json!(["1"])));
    assert_eq!(stands(&answer, "verify"), ("missing".into(), json!(["1"])));
    assert_eq!(answer["now"], "turn");
    for _ in 0..3 {
        folder.run(&format!("heads {JOURNAL}")).arg("1 u1").any_stdout().check();
    }
    assert_eq!(stands(&asked(&folder), "verify"), ("done".into(), json!([])));
}

/// A shaft that scatters far more than the archer does is to be looked at, with what was measured of it.
#[test]
fn a_retired_shaft_is_looked_at() {
    let folder = Folder::begun("1-3");
    folder.run(&format!("bench {JOURNAL} 3 --wobble 0.45mm")).any_stdout().check();
    for (at, x_mm) in (0..).zip([2, -3, 1, 4, -2, 3, -1, 2]) {
        let far_mm = if at % 2 == 0 { 160 } else { -160 };
        folder.enter(&json!({"shots": [
            {"shaft": "R", "x_mm": x_mm, "y_mm": -x_mm},
            {"shaft": "1", "x_mm": -x_mm, "y_mm": x_mm},
            {"shaft": "3", "x_mm": far_mm, "y_mm": far_mm - x_mm},
        ]}));
    }
    let inspect = asked(&folder)["inspect"].clone();
    assert_eq!(
        (&inspect[0]["shaft"], &inspect[0]["reason"]),
        (&json!("3"), &json!("does not repeat"))
    );
    assert_eq!(inspect[0]["measured"], json!({"wobble_mm": 0.45}));
    let said = folder.run(&format!("checklist {JOURNAL}")).any_stdout().check();
    for part in [
        "Look at 3 (does not repeat):",
        "  - Do not shoot it before this",
        "  Measured: wobble 0.45 mm",
    ] {
        assert!(said.contains(part), "{part} in\n{said}");
    }
    let bench = folder.run(&format!("bench {JOURNAL} 3 --wobble 0.1mm")).any_stdout();
    bench.stderr_has("3 was retired by its shots (does not repeat)").check();
}
