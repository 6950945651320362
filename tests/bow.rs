//! `bow`: the bow was changed, or stays as it is.

use serde_json::json;

use crate::support::{Folder, JOURNAL};

/// Six shafts that all land some 60 mm to the right, each shot once.
fn far_off() -> Folder {
    let folder = Folder::begun("1-6");
    for (first, last) in [(1, 2), (3, 4), (5, 6)] {
        shoot(&folder, first..=last, 60);
    }
    folder
}

/// An end of these shafts, which land about `x_mm` to the right.
fn shoot(folder: &Folder, shafts: std::ops::RangeInclusive<i32>, x_mm: i32) {
    let mut shots = vec![json!({"shaft": "R", "x_mm": 0, "y_mm": 0})];
    for shaft in shafts {
        let (x_mm, y_mm) = (x_mm + 7 - 2 * shaft, 3 * shaft - 9);
        shots.push(json!({"shaft": shaft.to_string(), "x_mm": x_mm, "y_mm": y_mm}));
    }
    folder.enter(&json!({"shots": shots, "evening": "2027-03-02"}));
}

#[test]
fn where_all_land_far_off_the_bow_comes_first() {
    let next = far_off().next();
    assert_eq!(next["step"], "bow");
    assert_eq!(next["shots"], json!([]));
    let shift = &next["bow"]["wanted_shift_mm"];
    let (x_mm, y_mm) = (shift[0].as_f64().unwrap(), shift[1].as_f64().unwrap());
    assert!((-75.0..=-35.0).contains(&x_mm) && y_mm.abs() < 20.0, "{shift}");
    let within = |when: &str| next["bow"][when].as_f64().unwrap();
    assert!(within("expected_within_if_moved") > within("expected_within_now") + 1.0);
}

#[test]
fn after_a_move_nock_work_goes_on() {
    let folder = far_off();
    folder
        .run(&format!("bow {JOURNAL} --part rest --move-mm=-3,0.5 --note"))
        .arg("rest three turns to the left")
        .stdout_has("rest")
        .check();
    assert_eq!(folder.next()["step"], "shoot");
    folder.run(&format!("next {JOURNAL}")).stdout_has("see the bow").check();
}

#[test]
fn before_a_measured_move_a_small_trial_is_asked_for() {
    let folder = far_off();
    let next = folder.next();
    assert!(next["why"].as_str().unwrap().contains("one small trial move of 0.8 mm"), "{next}");
    assert!(next["bow"].get("response").is_none() && next["bow"].get("propose_move_mm").is_none());
    folder.run(&format!("next {JOURNAL}")).stdout_has("--part rest --move-mm X,Y").check();
}

/// The rest was moved 0.8 mm to the left, which carried all shafts some 24 mm the same way.
pub fn measured() -> Folder {
    let folder = far_off();
    let trial = folder.run(&format!("bow {JOURNAL} --part rest --move-mm=-0.8,0 --note"));
    trial.arg("a trial").any_stdout().check();
    for (first, last) in [(1, 2), (3, 4), (5, 6), (1, 2), (3, 4), (5, 6)] {
        shoot(&folder, first..=last, 36);
    }
    folder
}

#[test]
fn a_measured_move_says_what_it_did_and_what_is_left_to_do() {
    let folder = measured();
    let next = folder.next();
    assert_eq!(next["step"], "bow", "{next}");
    let response = &next["bow"]["response"];
    assert_eq!((&response["part"], &response["moves"]), (&json!("rest"), &json!(1)));
    assert_eq!((&response["shots_before"], &response["shots_after"]), (&json!(6), &json!(12)));
    let along = &response["along"][0];
    assert_eq!(along["direction"], json!([1.0, 0.0]));
    let (right, limits) = (&along["mm_per_mm"][0], &along["intervals_mm_per_mm"][0]);
    let [right, low, high] = [right, &limits[0], &limits[1]].map(|one| one.as_f64().unwrap());
    assert!(low < 30.0 && 30.0 < high && (15.0..45.0).contains(&right), "{along}");
    let by = next["bow"]["propose_move_mm"][0].as_f64().unwrap();
    assert!((-1.6..=-0.6).contains(&by), "{next}");
    let typed = format!("--part rest --move-mm={by},");
    folder.run(&format!("next {JOURNAL}")).stdout_has(&typed).stdout_has("1.6 mm at once").check();
    folder.run(&format!("show {JOURNAL}")).stdout_has("Measured: each mm of the rest").check();
}

#[test]
fn left_as_it_is_the_bow_is_not_asked_for_again_at_once() {
    let folder = far_off();
    let leave = || folder.run(&format!("bow {JOURNAL} --leave")).arg("it stays tonight");
    leave().any_stdout().check();
    assert_eq!(folder.next()["step"], "shoot");
    shoot(&folder, 1..=2, 90);
    assert_ne!(folder.next()["step"], "bow", "two shafts are too few to speak again");
}

#[test]
fn a_note_is_enough_for_a_change() {
    let folder = far_off();
    folder.run(&format!("bow {JOURNAL} --note")).arg("new string").any_stdout().check();
    let recorded =
        folder.run(&format!("bow {JOURNAL} --json --part sight --note")).arg("one click").json();
    assert_eq!((&recorded["part"], &recorded["note"]), (&json!("sight"), &json!("one click")));
}
