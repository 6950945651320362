//! `end`: an end is entered, from JSON or from a typed line.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

#[test]
fn a_typed_line_is_echoed_in_words() {
    let folder = Folder::begun("1-12");
    folder
        .run(&format!("end {JOURNAL}"))
        .arg("R r3 d12 t0, 7 i3 r31 u8 tl2.5 tu1, 9 l4 u15 p, 4 x")
        .stdout_has("7      mark at 3 o'clock   31 mm right, 8 mm high")
        .stdout_has("tail 2.5 deg left, 1 deg high")
        .stdout_has("tail straight")
        .stdout_has("tail not read")
        .stdout_has("poor")
        .stdout_has("lost")
        .check();
}

#[test]
fn the_same_end_typed_or_in_json_says_the_same() {
    let typed = Folder::begun("1-3");
    typed
        .run(&format!("end {JOURNAL}"))
        .arg("R r3 d12 t0, 1 i3 r1in u8 tl2.5")
        .any_stdout()
        .check();
    let entered = Folder::begun("1-3");
    entered.enter(&json!({"shots": [
        {"shaft": "R", "x_mm": 3, "y_mm": -12, "lean_x_deg": 0, "lean_y_deg": 0},
        {"shaft": "1", "index_deg": 90, "x_mm": 25.4, "y_mm": 8, "lean_x_deg": -2.5, "lean_y_deg": 0},
    ]}));
    assert_eq!(typed.next(), entered.next());
}

#[test]
fn what_was_left_out_is_written_out_in_the_answer() {
    let folder = Folder::with_an_end();
    let shots = r#"{"shots":[{"shaft":"R","x_mm":0,"y_mm":0},{"shaft":"2","x_mm":1,"y_mm":2}]}"#;
    let recorded = folder.run(&format!("end {JOURNAL} --json -")).stdin(shots).json();
    assert_eq!(recorded["schema"], "quarterturn.end/1");
    assert_eq!(recorded["shots"][1]["index_deg"], 90.0, "as last recorded");
    assert!(recorded["shots"][1].get("lean_x_deg").is_none(), "unknown is absent");
    assert!(recorded["at"].is_string() && recorded["evening"].is_string());
}

#[test]
fn a_file_is_read_like_standard_input() {
    let folder = Folder::begun("1-3");
    folder
        .write("end.json", r#"{"shots":[{"shaft":"R","x_mm":0,"y_mm":0}],"note":"light breeze"}"#);
    let recorded = folder.run(&format!("end {JOURNAL} --json end.json")).json();
    assert_eq!(recorded["note"], "light breeze");
}

#[test]
fn a_lost_arrow_needs_no_hit_and_is_not_shot_again() {
    let folder = Folder::begun("1-3");
    folder.enter(&json!({"shots": [
        {"shaft": "R", "x_mm": 0, "y_mm": 0}, {"shaft": "3", "flags": ["lost"]}
    ]}));
    let next = folder.next();
    assert!(next["shafts"][2]["reason"].as_str().unwrap().starts_with("lost"));
}

#[test]
fn a_name_that_is_not_known_is_kept_and_said() {
    let folder = Folder::begun("1-3");
    let end = r#"{"shots":[{"shaft":"R","x_mm":0,"y_mm":0,"moon":"full"}]}"#;
    let entry = folder.run(&format!("end {JOURNAL} --json -")).stdin(end);
    entry.any_stdout().stderr_has("moon").check();
    assert!(folder.read(JOURNAL).contains("\"moon\":\"full\""));
}

#[test]
fn another_distance_is_kept_and_not_pooled() {
    let folder = Folder::with_an_end();
    let before = folder.next();
    folder.enter(&json!({"distance_m": 9.1, "evening": "2027-03-02", "shots": [
        {"shaft": "R", "x_mm": 0, "y_mm": 0}, {"shaft": "1", "x_mm": -200, "y_mm": 100}
    ]}));
    let after = folder.next();
    for name in ["within", "miss_mm", "shots_total"] {
        assert_eq!(before["shafts"][0][name], after["shafts"][0][name], "{name}");
    }
    assert_eq!(after["shafts"][0]["shots_left_out"], Value::from(1));
}

/// Nobody types quotes with cold hands.
#[test]
fn a_line_needs_no_quotes() {
    let folder = Folder::begun("1-3");
    let end = folder.run(&format!("end {JOURNAL} R r4 d6, 3 i3 r31 u8 tl2.5 --evening tuesday"));
    end.stdout_has("3      mark at 3 o'clock  31 mm right, 8 mm high  tail 2.5 deg left").check();
    let fix = folder.run(&format!("fix {JOURNAL} 1 3 r21 u7"));
    fix.stdout_has("3      mark at 3 o'clock  21 mm right, 7 mm high").check();
}
