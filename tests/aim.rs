//! `--aim set`: the shafts are to match each other.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

/// Bare shafts land so far right of the reference, mm.
const BOW_MM: f64 = 60.0;

fn begun(aim: &str) -> Folder {
    let folder = Folder::new();
    folder
        .run(&format!("new {JOURNAL} --shafts 1-3 --reference R --aim {aim}"))
        .args("--distance 18.3m --tolerance 25mm")
        .any_stdout()
        .check();
    folder
}

/// Eight ends in which all three land within a few millimetres of each other, 60 mm from the reference.
fn shot(aim: &str) -> Folder {
    let folder = begun(aim);
    for n in 0..8 {
        let mut shots = vec![json!({"shaft": "R", "x_mm": 0, "y_mm": 3 * (n % 2)})];
        for shaft in 1..=3 {
            let (x_mm, y_mm) = (BOW_MM + f64::from(2 * shaft), f64::from(n % 3));
            let shaft = shaft.to_string();
            shots.push(
                json!({"shaft": shaft, "index_deg": 90 * (n % 4), "x_mm": x_mm, "y_mm": y_mm}),
            );
        }
        folder.enter(&json!({"evening": "2027-03-02", "shots": shots}));
    }
    folder
}

fn numbers(pair: &Value) -> [f64; 2] {
    [0, 1].map(|at| pair[at].as_f64().unwrap())
}

#[test]
fn a_set_is_kept_where_it_is_and_the_move_comes_last() {
    let folder = shot("set");
    let next = folder.next();
    assert_eq!((&next["aim"], &next["step"]), (&json!("set"), &json!("finished")));
    for shaft in next["shafts"].as_array().unwrap() {
        assert_eq!(shaft["verdict"], "keep", "{shaft}");
        assert!(numbers(&shaft["miss_mm"])[0].abs() < 10.0, "{shaft}");
    }
    let (point, shift) =
        (numbers(&next["common_point_mm"]), numbers(&next["bow"]["wanted_shift_mm"]));
    assert!((point[0] - BOW_MM).abs() < 10.0, "{point:?}");
    assert!(point.iter().zip(shift).all(|(at, by)| (at + by).abs() < 1e-9), "{point:?} {shift:?}");
    let why = next["why"].as_str().unwrap();
    for part in ["3 shafts to keep", "mm right", "move the bow", "mm left", "set the sight"] {
        assert!(why.contains(part), "`{part}` is not in {why}");
    }
    let show = folder.run(&format!("show {JOURNAL}"));
    show.stdout_has("The miss is from the point that").stdout_has("can reach lies").check();
    folder.run(&format!("plot {JOURNAL} --output picture.svg")).any_stdout().check();
    assert!(folder.read("picture.svg").contains("round the point that most shafts can reach"));
}

#[test]
fn beside_a_reference_the_same_shots_ask_for_the_bow() {
    let next = shot("reference").next();
    assert_eq!((&next["aim"], &next["step"]), (&json!("reference"), &json!("bow")));
    assert!(next.get("common_point_mm").is_none());
}

#[test]
fn a_new_journal_says_what_the_shafts_are_to_match() {
    let folder = Folder::new();
    let begin = folder.run(&format!("new {JOURNAL} --shafts 1-3 --reference R --aim set"));
    let begin = begin.args("--distance 18.3m --tolerance 25mm");
    begin.stdout_has("The shafts are to match each other").check();
    let next = begun("set").next();
    assert_eq!(next["step"], "shoot");
}
