//! Notes, evenings, distances, and a shaft that joins later.

use serde_json::json;

use crate::support::{Folder, JOURNAL};

#[test]
fn a_typed_end_has_its_evening_its_note_and_its_distance() {
    let folder = Folder::begun("1-3");
    let end = folder
        .run(&format!("end {JOURNAL}"))
        .arg("R 0, 1 r3")
        .arg("--evening")
        .arg("first cold one");
    end.arg("--note")
        .arg("light breeze")
        .stdout_has("Recorded: end 1, 2 shots, evening first cold one.")
        .check();
    let near = folder.run(&format!("end {JOURNAL}")).arg("R 0, 1 r3").args("--distance 10yd");
    near.stdout_has("from 9.14 m, kept and not pooled").check();
    let log = folder.run(&format!("log {JOURNAL}")).any_stdout().check();
    let log = log.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(log.contains("end 1 (first cold one)") && log.contains("note: light breeze"), "{log}");
    assert!(log.contains("from 9.14 m"), "{log}");
    assert_eq!(folder.next()["shafts"][0]["shots_total"], 1);
    let bad = folder.run(&format!("end {JOURNAL}")).arg("R 0").args("--distance -18m");
    bad.code(3).stderr_has("-18 m cannot be").check();
}

#[test]
fn a_shaft_that_joins_is_shot_and_judged() {
    let folder = Folder::with_an_end();
    let add = folder.run(&format!("shaft {JOURNAL} 13 --add --index 90 --json")).json();
    assert_eq!((&add["schema"], &add["index_deg"]), (&json!("quarterturn.add/1"), &json!(90.0)));
    let next = folder.next();
    let shafts = next["shafts"].as_array().unwrap();
    assert_eq!(
        (shafts.len(), &shafts[3]["shaft"], &shafts[3]["index_now_deg"]),
        (4, &json!("13"), &json!(90.0))
    );
    folder.run(&format!("shaft {JOURNAL} S --add --reference")).any_stdout().check();
    folder.run(&format!("end {JOURNAL}")).arg("R 0, S r2, 13 r3").any_stdout().check();
    let again = folder.run(&format!("shaft {JOURNAL} 13 --add"));
    again.code(3).stderr_has("the journal has 13 already").check();
    let twin = folder.run(&format!("shaft {JOURNAL} I3 --add")).any_stdout();
    twin.stderr("note: \"13\" and \"I3\" look alike on a shaft and are two names here\n").check();
    for _ in 0..4 {
        folder.run(&format!("undo {JOURNAL}")).any_stdout().check();
    }
    assert_eq!(folder.next()["shafts"].as_array().unwrap().len(), 3);
}

#[test]
fn a_file_of_ends_is_recorded_whole_or_not_at_all() {
    let folder = Folder::begun("1-3");
    folder.write("ends", "R 0\n1 r3\n\nR 0, 2 u4\n");
    let typed = folder.run(&format!("end {JOURNAL} --file ends --evening one"));
    typed.stdout_has("Recorded: end 1").stdout_has("Recorded: end 2").check();
    let before = folder.read(JOURNAL);
    folder.write("ends", "R 0\n1 r3\n\nR 0, 77 u4\n");
    let typed = folder.run(&format!("end {JOURNAL} --file ends"));
    typed.code(3).stderr_has("--> ends:4:6").check();
    assert_eq!(folder.read(JOURNAL), before);
}

#[test]
fn a_hit_that_hardly_can_be_is_asked_about_and_recorded() {
    let folder = Folder::begun("1-3");
    for turn in [0, 9, -9, 6] {
        let end = format!("R r{} u2, 1 r60 u{}, 2 l50, 3 d{}", 10 + turn, 20 + turn, 30 + turn);
        folder.run(&format!("end {JOURNAL}")).arg(&end).any_stdout().check();
    }
    let end = folder.run(&format!("end {JOURNAL}")).arg("R r10, 1 l60 u20, 2 l50, 3 d30");
    end.stdout_has("Look: 1 lies ")
        .stdout_has("Is right left?")
        .stdout_has("fix evening.journal 5 \"1 ...\"")
        .check();
    assert_eq!(folder.next()["shafts"][0]["shots_total"], 5);
}
