//! `next`: what to do now.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

#[test]
fn asked_twice_it_says_the_same_and_writes_nothing() {
    let folder = Folder::with_an_end();
    let before = (folder.names(), folder.read(JOURNAL));
    let ask = |line: &str| folder.run(&format!("next {JOURNAL}{line}")).any_stdout().check();
    assert_eq!(ask(" --json"), ask(" --json"));
    assert_eq!(ask(""), ask(""));
    assert_eq!((folder.names(), folder.read(JOURNAL)), before);
}

#[test]
fn from_the_first_moment_every_shaft_is_spoken_of_and_the_reference_is_shot() {
    let next = Folder::begun("1-12").next();
    assert_eq!(next["schema"], "quarterturn.next/1");
    assert_eq!(next["step"], "shoot");
    let shots = next["shots"].as_array().unwrap();
    assert_eq!(shots.len(), 4);
    assert!(shots.contains(&json!({"shaft": "R"})), "{shots:?}");
    let names: Vec<_> = members(&next["shafts"], "shaft").collect();
    assert_eq!(names, ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12"]);
    assert!(members(&next["shafts"], "verdict").all(|verdict| verdict == "open"));
    assert!(next.get("pause").is_none(), "nothing was shot yet");
}

#[test]
fn shots_are_counted_where_they_were_shot() {
    let next = Folder::with_an_end().next();
    let shaft = |k: usize| &next["shafts"][k];
    assert_eq!(shaft(0)["index_now_deg"], 0.0);
    assert_eq!(shaft(1)["index_now_deg"], 90.0);
    assert_eq!(shaft(0)["shots_total"], 1);
    assert_eq!(shaft(2)["shots_total"], 0);
    for one in next["shafts"].as_array().unwrap() {
        let at = one["index_deg"] == one["index_now_deg"];
        let expected = if at { one["shots_total"].clone() } else { json!(0) };
        assert_eq!(one["shots_here"], expected, "{one}");
    }
}

#[test]
fn a_person_is_told_which_mark_goes_where() {
    let folder = Folder::with_an_end();
    let said = folder.run(&format!("next {JOURNAL}")).stdout_has("o'clock").check();
    let bare = folder.next()["shots"].as_array().unwrap().len() - 1;
    let told = said.lines().filter(|line| line.contains("mark")).count();
    assert!(told >= bare, "{bare} shafts are to be shot:\n{said}");
}

#[test]
fn a_poor_call_is_kept_and_left_out_of_the_estimate() {
    let folder = Folder::with_an_end();
    let before = folder.next();
    folder.enter(&json!({"shots": [
        {"shaft": "R", "x_mm": 0, "y_mm": 0},
        {"shaft": "1", "x_mm": 400, "y_mm": 400, "call": "poor"},
        {"shaft": "2", "x_mm": 300, "y_mm": 400, "flags": ["wind"]},
    ]}));
    let after = folder.next();
    assert_eq!(before["shafts"][0]["shots_total"], after["shafts"][0]["shots_total"]);
    assert_eq!(before["shafts"][1]["shots_total"], after["shafts"][1]["shots_total"]);
    for shaft in 0..3 {
        let moved = (miss(&before, shaft)[0] - miss(&after, shaft)[0]).abs();
        assert!(moved < 5.0, "shaft {shaft} by {moved} mm");
    }
}

#[test]
fn lean_that_was_not_read_is_not_a_lean_of_nothing() {
    let estimate = |lean: Value| {
        let folder = Folder::begun("1-3");
        let mut shot = json!({"shaft": "1", "x_mm": 30, "y_mm": 0});
        shot.as_object_mut().unwrap().extend(lean.as_object().unwrap().clone());
        folder.enter(&json!({"shots": [
            {"shaft": "R", "x_mm": 0, "y_mm": 0, "lean_x_deg": 0, "lean_y_deg": 0}, shot
        ]}));
        miss(&folder.next(), 0)
    };
    let unread = estimate(json!({}));
    let none = estimate(json!({"lean_x_deg": 0, "lean_y_deg": 0}));
    let far = estimate(json!({"lean_x_deg": -3, "lean_y_deg": 0}));
    // A straight arrow speaks for a small miss, a tail to the left for a miss to the right.
    assert!(none[0] < unread[0] && unread[0] < far[0], "{none:?} {unread:?} {far:?}");
}

fn members<'a>(list: &'a Value, name: &'static str) -> impl Iterator<Item = &'a str> {
    list.as_array().unwrap().iter().map(move |member| member[name].as_str().unwrap())
}

fn miss(next: &Value, shaft: usize) -> [f64; 2] {
    let miss = &next["shafts"][shaft]["miss_mm"];
    [miss[0].as_f64().unwrap(), miss[1].as_f64().unwrap()]
}
