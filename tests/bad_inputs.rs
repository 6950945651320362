//! Journals that no one should have, and that someone will: each is answered, explained, and nothing is made of nothing.

use serde_json::{Value, json};

use crate::support::repository::read;
use crate::support::schema::Schema;
use crate::support::{Folder, JOURNAL};

/// What a journal must hold before `keep` and before `retire` may be said.
const FEWEST: [(&str, u64); 2] = [("keep", 2), ("retire", 3)];

/// Both aims; what is bad for one may be bad for the other.
const AIMS: [&str; 2] = ["reference", "set"];

fn begun(shafts: &str, more: &str) -> Folder {
    let folder = Folder::new();
    folder
        .run(&format!("new {JOURNAL} --shafts {shafts} --reference R {more}"))
        .args("--distance 18.3m --tolerance 25mm")
        .any_stdout()
        .check();
    folder
}

fn shot(shaft: &str, x_mm: f64, y_mm: f64) -> Value {
    json!({"shaft": shaft, "x_mm": x_mm, "y_mm": y_mm})
}

fn enter(folder: &Folder, shots: &[Value]) {
    folder.enter(&json!({"evening": "2027-03-02", "shots": shots}));
}

/// As many ends of the reference at the spot and shafts 1 to 3 at `hits` from it, end by end.
fn ends(folder: &Folder, count: usize, hits: impl Fn(usize) -> [[f64; 2]; 3]) {
    for end in 0..count {
        let bare = ["1", "2", "3"].into_iter().zip(hits(end));
        let bare = bare.map(|(shaft, [x_mm, y_mm])| shot(shaft, x_mm, y_mm));
        enter(folder, &[shot("R", 0.0, 0.0)].into_iter().chain(bare).collect::<Vec<_>>());
    }
}

/// What `next` says, once everything that can be asked was answered as it should be.
fn sound(folder: &Folder) -> Value {
    let next = folder.next();
    let show = folder.run(&format!("show {JOURNAL} --json")).json();
    for (name, answer) in [("next", &next), ("show", &show)] {
        let schema = Schema::parse(&read(&format!("docs/schema/{name}.schema.json")));
        assert_eq!(schema.faults(answer), Vec::<String>::new(), "{answer}");
    }
    for shaft in next["shafts"].as_array().unwrap() {
        for (verdict, fewest) in FEWEST {
            let enough = shaft["shots_total"].as_u64().unwrap() >= fewest;
            assert!(shaft["verdict"] != verdict || enough, "{shaft}");
        }
    }
    for command in ["next", "show", "plot --force"] {
        let said = folder.run(&format!("{command} {JOURNAL}")).any_stdout().check();
        assert!(!said.contains("NaN") && !said.contains("inf "), "{said}");
    }
    next
}

fn verdicts(next: &Value) -> Vec<&str> {
    let shafts = next["shafts"].as_array().unwrap().iter();
    shafts.map(|shaft| shaft["verdict"].as_str().unwrap()).collect()
}

#[test]
fn one_shot_only() {
    for aim in AIMS {
        for only in ["1", "R"] {
            let folder = begun("1-3", &format!("--aim {aim}"));
            enter(&folder, &[shot(only, 400.0, 300.0)]);
            let next = sound(&folder);
            assert_eq!(next["step"], "shoot");
            assert_eq!(verdicts(&next), ["open"; 3]);
        }
    }
}

#[test]
fn one_shaft_only() {
    for aim in AIMS {
        let folder = begun("1", &format!("--aim {aim}"));
        assert_eq!(verdicts(&sound(&folder)), ["open"]);
        for x_mm in [31.0, 28.0, 35.0, 30.0] {
            enter(&folder, &[shot("R", 0.0, 0.0), shot("1", x_mm, 0.0)]);
            sound(&folder);
        }
    }
}

/// Without a reference beside them nobody knows where bare shafts should have landed.
#[test]
fn ends_without_a_reference() {
    let folder = begun("1-3", "");
    for _ in 0..6 {
        enter(&folder, &[shot("1", 30.0, 8.0), shot("2", -20.0, 10.0), shot("3", 1.0, 1.0)]);
    }
    let next = sound(&folder);
    assert_eq!(verdicts(&next), ["open"; 3]);
    assert_eq!(next["shots"][0], json!({"shaft": "R"}), "the reference is asked for");
}

#[test]
fn one_index_only() {
    let folder = begun("1-3", "--positions 1");
    ends(&folder, 8, |end| {
        let up = f64::from(u8::try_from(end % 3).unwrap()) * 6.0;
        [[4.0, up], [20.0, -up], [-70.0, up]]
    });
    let next = sound(&folder);
    for shaft in next["shafts"].as_array().unwrap() {
        assert_eq!(shaft["index_deg"], 0.0);
    }
    assert_eq!(verdicts(&next)[0], "keep");
    assert_eq!(verdicts(&next)[2], "retire");
}

#[test]
fn every_hit_at_exactly_the_same_point() {
    for aim in AIMS {
        for (count, at) in
            [(1, [0.0, 0.0]), (4, [0.0, 0.0]), (20, [0.0, 0.0]), (20, [150.0, -90.0])]
        {
            let folder = begun("1-3", &format!("--aim {aim}"));
            ends(&folder, count, |_| [at; 3]);
            let next = sound(&folder);
            if count == 1 {
                assert_eq!(verdicts(&next), ["open"; 3]);
            }
            for shaft in next["shafts"].as_array().unwrap() {
                let variance = shaft["miss_cov_mm2"][0][0].as_f64().unwrap();
                assert!(variance > 0.1, "nothing is known to a third of a millimetre: {shaft}");
            }
        }
    }
}

/// It cannot be told from a bow that is off; a person is told to look at it first.
#[test]
fn a_reference_that_is_itself_crooked() {
    let folder = begun("1-3", "");
    for end in 0..6 {
        let up = f64::from(end % 3) * 8.0 - 8.0;
        let straight = |shaft: &str, x_mm: f64| json!({"shaft": shaft, "x_mm": x_mm, "y_mm": up, "lean_x_deg": 0, "lean_y_deg": 0});
        let crooked =
            json!({"shaft": "R", "x_mm": 40, "y_mm": -up, "lean_x_deg": -3.6, "lean_y_deg": 0});
        enter(&folder, &[crooked, straight("1", 3.0), straight("2", -4.0), straight("3", 1.0)]);
    }
    let next = sound(&folder);
    assert_eq!(next["step"], "bow");
    assert_eq!(verdicts(&next), ["open"; 3], "no shaft is given up for it");
    let said = folder.run(&format!("next {JOURNAL}"));
    said.stdout_has("another trusted fletched arrow").check();
}

#[test]
fn a_reference_that_is_lost_and_replaced() {
    let folder = begun("1-3", "");
    ends(&folder, 3, |_| [[20.0, 5.0]; 3]);
    folder.run(&format!("shaft {JOURNAL} R --lost")).any_stdout().check();
    let next = sound(&folder);
    assert_eq!(next["step"], "finished");
    assert!(next["why"].as_str().unwrap().contains("record it as repaired"), "{}", next["why"]);
    assert_eq!(verdicts(&next), ["open"; 3]);
    enter(&folder, &[shot("1", 20.0, 5.0)]);
    sound(&folder);
    folder.run(&format!("shaft {JOURNAL} R --repaired")).any_stdout().check();
    let next = sound(&folder);
    assert_eq!(next["step"], "shoot");
    assert_eq!(next["shots"][0], json!({"shaft": "R"}));
    for _ in 0..3 {
        enter(&folder, &[shot("R", 50.0, 0.0), shot("1", 20.0, 5.0), shot("2", 20.0, 5.0)]);
    }
    let next = sound(&folder);
    assert!(next["bow"]["offset_mm"][0].as_f64().unwrap() < 0.0, "the new arrow is what counts");
}

/// The same shaft at the same index, 300 mm apart again and again.
#[test]
fn a_journal_that_contradicts_itself() {
    for aim in AIMS {
        for count in [2, 4, 12] {
            let folder = begun("1-3", &format!("--aim {aim}"));
            ends(&folder, count, |end| {
                let side = if end % 2 == 0 { 150.0 } else { -150.0 };
                [[side, 0.0], [5.0, 5.0], [-5.0, 5.0]]
            });
            let next = sound(&folder);
            assert_ne!(verdicts(&next)[0], "keep");
            if count == 12 {
                let reason = next["shafts"][0]["reason"].as_str().unwrap();
                assert!(reason.starts_with("does not repeat"), "{reason}");
            }
            let folder = begun("1-3", &format!("--aim {aim}"));
            ends(&folder, count, |end| {
                [0, 1, 2].map(|shaft| [if (end + shaft) % 2 == 0 { 150.0 } else { -150.0 }, 0.0])
            });
            assert!(!verdicts(&sound(&folder)).contains(&"keep"));
        }
    }
}

#[test]
fn shafts_that_land_nearly_three_metres_off() {
    for count in [1, 3, 6] {
        let folder = begun("1-3", "");
        ends(&folder, count, |_| [[2900.0, -2900.0]; 3]);
        let next = sound(&folder);
        assert_eq!(next["step"], if count < 3 { "shoot" } else { "bow" });
        let off_mm = next["bow"]["offset_mm"][0].as_f64().unwrap();
        assert!((off_mm - 2900.0).abs() < 30.0, "{off_mm}");
        assert_eq!(verdicts(&next), ["open"; 3]);
        let set = begun("1-3", "--aim set");
        ends(&set, count, |_| [[2900.0, -2900.0]; 3]);
        assert_ne!(sound(&set)["step"], "bow");
        // Every shaft to another corner.
        let apart = begun("1-3", "");
        ends(&apart, count, |_| [[2900.0, 2900.0], [-2900.0, 2900.0], [0.0, -2900.0]]);
        assert!(!verdicts(&sound(&apart)).contains(&"keep"));
    }
}

#[test]
fn leans_as_wide_as_they_can_be_entered() {
    let folder = begun("1-3", "");
    for end in 0..4 {
        let lean_deg = if end % 2 == 0 { 60 } else { -60 };
        let wild = |shaft: &str| json!({"shaft": shaft, "x_mm": 10, "y_mm": 0, "lean_x_deg": lean_deg, "lean_y_deg": -lean_deg});
        enter(&folder, &["R", "1", "2", "3"].map(wild));
    }
    sound(&folder);
}

#[test]
fn sixty_shafts() {
    let folder = begun("1-60", "--positions any");
    assert_eq!(sound(&folder)["shafts"].as_array().unwrap().len(), 60);
    ends(&folder, 1, |_| [[20.0, 5.0]; 3]);
    sound(&folder);
}
