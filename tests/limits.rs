//! The archer's limits: shots of an evening, turns of a nock, shafts of a journal.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

fn begun(settings: &str) -> Folder {
    let folder = Folder::new();
    let begin = folder.run(&format!("new {JOURNAL} --reference R --distance 18.3m {settings}"));
    begin.args("--tolerance 25mm").any_stdout().check();
    folder
}

/// Ends of shaft 1 beside the reference, its mark at each of `marks_deg` in turn.
fn shoot(folder: &Folder, marks_deg: &[i32]) {
    for index_deg in marks_deg {
        folder.enter(&json!({"evening": "2027-03-02", "shots": [
            {"shaft": "R", "x_mm": 0, "y_mm": 0},
            {"shaft": "1", "index_deg": index_deg, "x_mm": 21, "y_mm": -9},
        ]}));
    }
}

fn first(next: &Value) -> &Value {
    &next["shafts"][0]
}

#[test]
fn an_evening_has_as_many_shots_as_the_archer_said() {
    let folder = begun("--shafts 1-3 --shots-per-evening 4");
    shoot(&folder, &[0; 3]);
    assert!(folder.next().get("pause").is_none());
    shoot(&folder, &[0]);
    assert!(folder.next()["pause"].as_str().unwrap().contains("4 bare shots"));
}

#[test]
fn turns_are_counted_and_a_worn_nock_is_to_be_renewed() {
    let folder = begun("--shafts 1-2 --turns-per-nock 3");
    shoot(&folder, &[0, 90, 90, 180]);
    let next = folder.next();
    assert_eq!(
        (&first(&next)["nock_turns"], &first(&next)["nock_turns_left"]),
        (&json!(2), &json!(1))
    );
    assert!(!first(&next)["reason"].as_str().unwrap().contains("nock"));
    shoot(&folder, &[270]);
    let next = folder.next();
    assert_eq!(first(&next)["nock_turns_left"], 0);
    let reason = first(&next)["reason"].as_str().unwrap();
    assert!(reason.ends_with("; renew its nock, turned 3 times"), "{reason}");
    folder.run(&format!("show {JOURNAL}")).stdout_has("renew its nock").check();
    let said = folder.run(&format!("next {JOURNAL}"));
    said.stdout_has("Renew the nock of 1 and record the shaft as repaired").check();
    folder.run(&format!("shaft {JOURNAL} 1 --repaired")).any_stdout().check();
    assert_eq!(first(&folder.next())["nock_turns_left"], 3);
}

#[test]
fn the_limits_are_shown_as_they_were_said_and_as_they_are_where_nothing_was() {
    for (settings, shots, turns) in
        [("--shafts 1", 36, 8), ("--shafts 1 --shots-per-evening 24 --turns-per-nock 6", 24, 6)]
    {
        let show = begun(settings).run(&format!("show {JOURNAL} --json")).json();
        assert_eq!(show["shots_per_evening"], shots);
        assert_eq!(show["turns_per_nock"], turns);
    }
}

#[test]
fn a_limit_that_cannot_be_is_refused() {
    for (option, value, most) in [("shots-per-evening", 0, 500), ("turns-per-nock", 101, 100)] {
        let folder = Folder::new();
        let new = folder.run(&format!("new {JOURNAL} --shafts 1 --reference R --distance 18m"));
        let label = format!("{value} cannot be: from 1 to {most}");
        let new = new.args(&format!("--tolerance 25mm --{option} {value}")).code(2);
        new.stderr_has(&format!("the value of --{option} cannot be used"))
            .stderr_has(&label)
            .check();
    }
}

#[test]
fn sixty_shafts_are_answered_and_too_many_are_refused_with_the_reason() {
    let next = begun("--shafts 1-60").next();
    assert_eq!(next["shafts"].as_array().unwrap().len(), 60);
    let folder = Folder::new();
    let new = folder.run(&format!("new {JOURNAL} --shafts 1-40,41-73 --reference R"));
    let new = new.args("--distance 18m --tolerance 25mm").code(2);
    let new = new.stderr_has("73 shafts: a journal serves at most 72");
    new.stderr_has("begin a journal for each set of arrows").check();
    assert_eq!(folder.names(), [""; 0]);
}
