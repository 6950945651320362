//! `fletch`: where the vanes go, and which shafts are not to be fletched yet.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

/// Shaft 1 lands with the reference with its mark at 3 o'clock, 2 was never shot, 3 is lost.
pub fn found() -> Folder {
    let folder = Folder::begun("1-3");
    for x_mm in [0, 4, -4, 2, -2, 3, -3, 1] {
        folder.enter(&json!({"shots": [
            {"shaft": "R", "x_mm": x_mm, "y_mm": -x_mm},
            {"shaft": "1", "index_deg": 90, "x_mm": -x_mm, "y_mm": x_mm},
        ]}));
    }
    folder.run(&format!("shaft {JOURNAL} 3 --lost")).any_stdout().check();
    folder
}

/// What it answers other programs.
pub fn answer() -> Value {
    found().run(&format!("fletch {JOURNAL} --json --vane-angle left --wrap 80mm")).json()
}

#[test]
fn the_cock_vane_is_told_from_the_mark() {
    let folder = found();
    let screen = folder.run(&format!("fletch {JOURNAL}")).any_stdout().check();
    assert!(screen.lines().all(|line| line.chars().count() <= 80), "{screen}");
    let said = screen.split_whitespace().collect::<Vec<_>>().join(" ");
    for part in [
        "1 of 3 shafts can be fletched: 3 vanes, the cock vane at 12 o'clock.",
        "1 3 o'clock three hours counter-clockwise 270, 30, 150",
        "Look at the nock from behind.",
        "Still open: 2 (not shot yet).",
        "Retired: 3 (lost: it was not found).",
        "Caution: Glue and solvent",
        "What to look at on those: quarterturn checklist evening.journal",
        "To print: quarterturn paper fletch evening.journal --diameter 6.5mm",
        "Then: quarterturn glue evening.journal SHAFTS --part vanes --cure TIME and for each: quarterturn shaft evening.journal NAME --fletched",
    ] {
        assert!(said.contains(part), "{part} in\n{screen}");
    }
    for (asked, row) in [
        ("--cock 3", "1 3 o'clock on the mark 0, 120, 240"),
        ("--cock 9 --vanes 4", "1 3 o'clock half a turn 180, 270, 0, 90"),
        ("--rest side-right", "1 3 o'clock half a turn 180, 300, 60"),
        ("--rest side-left", "1 3 o'clock on the mark 0, 120, 240"),
        ("--rest full-capture", "1 3 o'clock three hours counter-clockwise 270, 30, 150"),
        ("--vane-angle right", "the front of each vane stands right of its back"),
        ("--vane-angle straight", "Vanes straight along the shaft"),
        ("--wrap 4in", "from the end of the shaft 102 mm forward"),
    ] {
        let said = folder.run(&format!("fletch {JOURNAL} {asked}")).any_stdout().check();
        let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(said.contains(row), "{row} in\n{said}");
    }
}

#[test]
fn other_programs_are_told_the_same() {
    let answer = answer();
    assert_eq!(answer["keep"][0]["index_deg"], 90.0);
    assert_eq!(answer["keep"][0]["vanes_from_mark_deg"], json!([270.0, 30.0, 150.0]));
    assert_eq!(answer["open"], json!([{"shaft": "2", "reason": "not shot yet"}]));
    assert_eq!(answer["retire"][0]["shaft"], "3");
    assert_eq!((&answer["vane_angle"], &answer["wrap_mm"]), (&json!("left"), &json!(80.0)));
}

#[test]
fn what_is_fletched_already_is_not_fletched_again() {
    let folder = found();
    folder.run(&format!("shaft {JOURNAL} 1 --fletched")).any_stdout().check();
    let run = folder.run(&format!("fletch {JOURNAL}"));
    let run = run.stdout_has("0 of 3 shafts can be fletched").stdout_has("Fletched already: 1.");
    let said = run.check();
    assert!(said.ends_with("Then: quarterturn next evening.journal\n"), "{said}");
}

/// With the mark tried a third of a turn from where it stood, that is where the nock of an arrow with vanes stays.
#[test]
fn arrows_that_carry_vanes_already_stand_in_thirds() {
    let folder = Folder::new();
    let new = format!("new {JOURNAL} --shafts 1-3 --reference R --distance 18.3m --tolerance 25mm");
    folder.run(&new).args("--positions 3").any_stdout().check();
    for x_mm in [0, 4, -4, 2, -2, 3, -3, 1] {
        folder.enter(&json!({"shots": [
            {"shaft": "R", "x_mm": x_mm, "y_mm": -x_mm},
            {"shaft": "1", "index_deg": 120, "x_mm": -x_mm, "y_mm": x_mm},
        ]}));
    }
    let said = folder.run(&format!("fletch {JOURNAL}")).any_stdout().check();
    for part in [
        "begun with --positions 3",
        "1      4 o'clock  four hours clockwise\n",
        "Still open: 2 (not shot yet); 3 (not shot yet).",
        "Then, for each: quarterturn shaft evening.journal NAME --fletched\n",
    ] {
        assert!(said.contains(part), "{part} in\n{said}");
    }
    assert!(
        !said.contains("Glue and solvent") && !said.contains("cock vane from the mark"),
        "{said}"
    );
}
