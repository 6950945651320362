//! `fix`, `undo` and `redo`: what was entered wrong is put right, and nothing is rewritten.

use serde_json::json;

use crate::support::{Folder, JOURNAL};

/// Two ends; in the first 1 and 2 were written for each other.
fn shot() -> Folder {
    let folder = Folder::with_an_end();
    folder.enter(&json!({"evening": "2027-03-02", "shots": [
        {"shaft": "R", "x_mm": 1, "y_mm": 2}, {"shaft": "3", "x_mm": 60, "y_mm": 9, "call": "poor"}
    ]}));
    folder
}

#[test]
fn one_shot_of_an_earlier_end_is_corrected() {
    let folder = shot();
    let before = folder.read(JOURNAL);
    let fix = folder.run(&format!("fix {JOURNAL} 1")).arg("1 r13 u8 tl2.5");
    fix.stdout_has("Corrected: end 1, 3 shots, evening 2027-03-02.")
        .stdout_has("1      mark at 12 o'clock  13 mm right, 8 mm high")
        .stdout_has("2      mark at 3 o'clock   4 mm left, 15 mm high")
        .check();
    assert!(folder.read(JOURNAL).starts_with(&before), "something was rewritten");
    // It says the same as a journal in which it was entered so.
    let other = Folder::begun("1-3");
    other.enter(&json!({"evening": "2027-03-02", "shots": [
        {"shaft": "R", "x_mm": 3, "y_mm": -12, "lean_x_deg": 0.5, "lean_y_deg": 0},
        {"shaft": "1", "x_mm": 13, "y_mm": 8, "lean_x_deg": -2.5, "lean_y_deg": 0},
        {"shaft": "2", "index_deg": 90, "x_mm": -4, "y_mm": 15},
    ]}));
    other.enter(&json!({"evening": "2027-03-02", "shots": [
        {"shaft": "R", "x_mm": 1, "y_mm": 2}, {"shaft": "3", "x_mm": 60, "y_mm": 9, "call": "poor"}
    ]}));
    assert_eq!(folder.next(), other.next());
}

#[test]
fn two_arrows_written_for_each_other_are_exchanged() {
    let folder = shot();
    let fix = folder.run(&format!("fix {JOURNAL} 1 --exchange 1,2 --json")).json();
    assert_eq!(fix["schema"], "quarterturn.fix/1");
    let shots = fix["end"]["shots"].as_array().unwrap();
    let said: Vec<_> =
        shots.iter().map(|shot| (&shot["shaft"], &shot["index_deg"], &shot["x_mm"])).collect();
    assert_eq!(json!(said), json!([["R", 0.0, 3.0], ["1", 0.0, -4.0], ["2", 90.0, 31.0]]));
    let back = folder.run(&format!("undo {JOURNAL} --json")).json();
    assert_eq!(back["taken_back"], "fix");
    let again = folder.run(&format!("redo {JOURNAL} --json")).json();
    assert_eq!(again["brought_back"], "fix");
}

#[test]
fn undo_and_redo_go_back_and_forth() {
    let folder = shot();
    let all = folder.next();
    for _ in 0..2 {
        folder.run(&format!("undo {JOURNAL}")).any_stdout().check();
    }
    let none = folder.next();
    folder.run(&format!("undo {JOURNAL}")).code(3).stderr_has("nothing to take back").check();
    for _ in 0..2 {
        folder.run(&format!("redo {JOURNAL}")).stdout_has("Brought back: an end").check();
    }
    assert_eq!(folder.next(), all);
    assert_ne!(all, none);
    let way_on = "only what `undo` took back last, with nothing entered since, can be brought back";
    folder.run(&format!("redo {JOURNAL}")).code(3).stderr_has(way_on).check();
}

#[test]
fn a_correction_that_cannot_be_is_told_at_its_place() {
    let folder = shot();
    let before = folder.read(JOURNAL);
    for (end, line, said) in [
        ("7", "1 r3", "there is no end 7 in this journal\n |\n = help: it has ends 1 to 2"),
        ("1", "3 r3", "no arrow \"3\" was shot in this end"),
        ("1", "1", "what of 1?"),
        ("1", "1 r3100", "3100 mm is too much"),
        ("1", "1 z8", "\"z8\" is not a word of the line"),
        ("1", "1 r31 u8", "end 1 says this already"),
    ] {
        folder.run(&format!("fix {JOURNAL} {end}")).arg(line).code(3).stderr_has(said).check();
    }
    for (pair, code, said) in
        [("1,9", 3, "no arrow \"9\" was shot"), ("1", 2, "two arrows are expected")]
    {
        folder
            .run(&format!("fix {JOURNAL} 1 --exchange {pair}"))
            .code(code)
            .stderr_has(said)
            .check();
    }
    assert_eq!(folder.read(JOURNAL), before);
}
