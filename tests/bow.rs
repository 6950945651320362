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
