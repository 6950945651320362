//! What looks wrong is said beside everything else.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

/// Where each of six shafts lands with its mark at 12 o'clock, mm from the reference.
const MISSES: [[f64; 2]; 6] =
    [[62.0, 0.0], [-48.0, 24.0], [4.0, -3.0], [0.0, 5.0], [-6.0, 0.0], [2.0, 2.0]];

/// A shot of the shaft `number` that lands where the shaft `lands_as` does, a little off.
fn shot(number: usize, lands_as: usize, count: usize) -> Value {
    let [x_mm, y_mm] = MISSES[lands_as - 1];
    let (sin, cos) = (2.4 * count as f64).sin_cos();
    json!({"shaft": number.to_string(), "x_mm": x_mm + 9.0 * cos, "y_mm": y_mm + 9.0 * sin,
           "lean_x_deg": -0.09 * x_mm, "lean_y_deg": -0.09 * y_mm})
}

fn end(bare: [Value; 3]) -> Value {
    let reference = json!({"shaft": "R", "x_mm": 0, "y_mm": 0, "lean_x_deg": 0, "lean_y_deg": 0});
    let shots: Vec<_> = std::iter::once(reference).chain(bare).collect();
    json!({"evening": "2027-03-02", "shots": shots})
}

/// Ten ends of six shafts, and an eleventh in which 1 and 2 are exchanged.
pub fn exchanged() -> Folder {
    let folder = Folder::begun("1-6");
    for count in 0..10 {
        let first = 1 + 3 * (count % 2);
        folder.enter(&end([0, 1, 2].map(|one| shot(first + one, first + one, 3 * count + one))));
    }
    folder.enter(&end([shot(1, 2, 30), shot(2, 1, 31), shot(3, 3, 32)]));
    folder
}

#[test]
fn exchanged_numbers_are_hinted_at_and_nothing_is_corrected() {
    let folder = exchanged();
    let text = "Shots of 1 and 2 in end 11 look exchanged: if they are, put the end right with `fix` 11 \
                --exchange 1,2.";
    let hint = json!({"kind": "exchanged", "shafts": ["1", "2"], "end": 11, "text": text});
    let next = folder.next();
    assert_eq!(next["hints"], json!([hint]));
    assert_eq!(next["shafts"][0]["shots_total"], 6);
    let show = folder.run(&format!("show {JOURNAL} --json")).json();
    assert_eq!(show["hints"], next["hints"]);
    for command in ["next", "show"] {
        let said = folder.run(&format!("{command} {JOURNAL}")).any_stdout().check();
        let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(said.contains(&format!("Hint: {text}")), "{said}");
    }
}

#[test]
fn once_the_end_was_taken_back_and_entered_anew_the_hint_is_gone() {
    let folder = exchanged();
    folder.run(&format!("undo {JOURNAL}")).any_stdout().check();
    folder.enter(&end([shot(1, 1, 31), shot(2, 2, 30), shot(3, 3, 32)]));
    assert!(folder.next().get("hints").is_none(), "{}", folder.next()["hints"]);
}

/// A shaft that lands on the reference twice, beside another that does again and again; of the second shot the archer
/// is not sure.
pub fn doubtful() -> Folder {
    let folder = Folder::begun("1-3");
    let on = |shaft: &str| json!({"shaft": shaft, "x_mm": 0, "y_mm": 0, "lean_x_deg": 0, "lean_y_deg": 0});
    for _ in 0..9 {
        folder.enter(&json!({"shots": [on("R"), on("2"), on("3")]}));
    }
    let mut last = on("1");
    last["flags"] = json!(["doubtful"]);
    for one in [on("1"), last] {
        folder.enter(&json!({"shots": [on("R"), one]}));
    }
    folder
}

#[test]
fn a_verdict_that_hangs_on_a_doubtful_shot_says_so_in_show() {
    let folder = doubtful();
    let show = folder.run(&format!("show {JOURNAL} --json")).json();
    assert_eq!(show["shafts"][0]["verdict"], "keep", "{}", show["shafts"][0]);
    let text = "Without the shot of end 11 (on the spot) it would be open.";
    let doubt = json!({"end": 11, "miss_mm": [0.0, 0.0], "verdict": "open", "text": text});
    assert_eq!(show["shafts"][0]["doubts"], json!([doubt]));
    assert!(show["shafts"][1].get("doubts").is_none(), "{}", show["shafts"][1]);
    folder.run(&format!("show {JOURNAL}")).stdout_has(text).check();
}
