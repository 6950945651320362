//! `verify`: finished arrows by number, the sight, and the shape of the group.

use serde_json::{Value, json};

use crate::heads::{dozen, enter};
use crate::support::{Folder, JOURNAL};

/// Three rounds of five arrows from 20 yards: 20 right and 30 low, arrow 4 also 90 left.
pub fn shoot(folder: &Folder) {
    enter(folder, "20yd", "field", "1 r24 d36, 2 r13 d25, 3 r30 d22, 4 l75 d33, 5 r16 d41");
    enter(folder, "20yd", "field", "1 r12 d24, 2 r27 d38, 3 r18 d31, 4 l62 d26, 5 r25 d28");
    enter(folder, "20yd", "field", "1 r22 d29, 2 r19 d20, 3 r14 d37, 4 l70 d19, 5 r26 d33");
}

/// The screen with its lines joined.
fn said(folder: &Folder, options: &str) -> String {
    let said = folder.run(&format!("verify {JOURNAL} {options}")).any_stdout().check();
    assert!(said.lines().all(|line| line.chars().count() <= 80), "{said}");
    said.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn told(folder: &Folder, options: &str) -> Value {
    folder.run(&format!("verify {JOURNAL} --json {options}")).json()
}

#[test]
fn an_arrow_that_lands_elsewhere_is_named_and_the_others_keep_their_promise() {
    let folder = dozen();
    shoot(&folder);
    let screen = said(&folder, "");
    for part in [
        "within 25 mm of each other's middle at 18.3 m",
        "apart",
        "4 from 18.29 m: 90 mm left and 4 mm high of the others, more than 25 mm at 95 %.",
        "Flex it, spin it, look at its nock, its mark and its vanes",
    ] {
        assert!(screen.contains(part), "{part} in\n{screen}");
    }
    let answer = told(&folder, "");
    let at = &answer["distances"][0];
    let arrows = at["arrows"].as_array().unwrap();
    let verdicts: Vec<_> = arrows.iter().map(|arrow| arrow["verdict"].clone()).collect();
    assert_eq!(verdicts.iter().filter(|verdict| **verdict == json!("apart")).count(), 1);
    assert_eq!((&arrows[3]["shaft"], &arrows[3]["verdict"]), (&json!("4"), &json!("apart")));
    // It does not draw the others after it.
    assert_eq!(verdicts.iter().filter(|verdict| **verdict == json!("together")).count(), 4);
    assert!(arrows[0]["bare_within"].as_f64().unwrap() > 0.0);
}

#[test]
fn the_pin_goes_toward_the_miss_and_how_far_takes_the_way_to_it() {
    let folder = dozen();
    shoot(&folder);
    enter(&folder, "20yd", "field", "1 r24 d36 p, 2 l900 d900 p");
    let screen = said(&folder, "");
    assert!(screen.contains("15 shots land 3 mm right and 29 mm low of the spot"), "{screen}");
    assert!(screen.contains("move the pin down; how far, --eye-to-pin 85cm tells."), "{screen}");
    let screen = said(&folder, "--eye-to-pin 85cm");
    assert!(screen.contains("move the pin 1.4 mm (1.2 to 1.6) down."), "{screen}");
    let sight = "quarterturn bow evening.journal --note \"pin\" --part sight";
    assert!(screen.contains(sight), "{screen}");
    let centre = told(&folder, "--eye-to-pin 85cm")["distances"][0]["centre"].clone();
    assert_eq!((&centre["x"]["sure"], &centre["y"]["sure"]), (&json!(false), &json!(true)));
    let pin = centre["y"]["pin_mm"].as_f64().unwrap();
    let by_hand = centre["miss_mm"][1].as_f64().unwrap() * 850.0 / 18_288.0;
    assert!((pin - by_hand).abs() < 1e-9, "{pin} {by_hand}");
    let moved = folder.run(&format!("bow {JOURNAL} --part sight --note")).arg("pin 1.4 mm down");
    moved.any_stdout().check();
    let screen = said(&folder, "");
    assert!(screen.starts_with("No finished arrow was shot with field points yet"), "{screen}");
    assert!(screen.contains("Left out: 4 groups shot before"), "{screen}");
    enter(&folder, "20yd", "field", "1 r3 d6, 2 l5 u2, 3 r1 u9, 4 l8 d7");
    assert!(said(&folder, "").contains("no miss is sure, leave the pin."));
}

#[test]
fn what_cannot_be_said_yet_is_said() {
    let folder = dozen();
    let screen = said(&folder, "");
    assert!(screen.contains("Shoot each three times, one arrow to a spot"), "{screen}");
    enter(&folder, "27m", "field", "1 r3 d6");
    let screen = said(&folder, "");
    assert!(screen.contains("From 27 m: one arrow has no others beside it"), "{screen}");
    assert!(screen.contains("Sight from 27 m: three shots must count"), "{screen}");
    enter(&folder, "27m", "field", "2 r3 d6");
    let screen = said(&folder, "");
    assert!(screen.contains("how well one arrow repeats is not known yet"), "{screen}");
    enter(&folder, "18m", "field", "1 r9 d2, 2 l12 u4, 3 0");
    enter(&folder, "18m", "field", "1 l6 u8, 2 r20 d9, 3 r8 d16");
    let screen = said(&folder, "");
    assert!(screen.contains("Open from 18 m, with about so many more rounds"), "{screen}");
    let distances = told(&folder, "")["distances"].clone();
    assert_eq!(distances[0]["distance_m"], 18.0, "the nearest first, whenever it was shot");
}

#[test]
fn a_shape_is_hinted_at_only_where_it_is_sure() {
    let rounds = |lines: [&str; 3]| {
        let folder = dozen();
        for line in lines {
            enter(&folder, "18m", "field", line);
        }
        said(&folder, "")
    };
    let wide = rounds([
        "1 r60 d3, 2 l45 u2, 3 r30 u4, 4 l70 d5",
        "1 l50 u4, 2 r55 d4, 3 l62 d1, 4 r38 u1",
        "1 l20 d2, 2 r10 u3, 3 r66 u2, 4 l41 u5",
    ]);
    for part in ["wide and flat", "a grip that twists", "Common practice", "It is a hint"] {
        assert!(wide.contains(part), "{part} in\n{wide}");
    }
    let tall = rounds([
        "1 d60 r3, 2 u45 l2, 3 d30 l4, 4 u70 r5",
        "1 u50 l4, 2 d55 r4, 3 u62 r1, 4 d38 l1",
        "1 u20 r2, 2 d10 l3, 3 d66 l2, 4 u41 l5",
    ]);
    assert!(tall.contains("18 m tall (") && tall.contains("an anchor that change"), "{tall}");
    let slant = [
        "1 r60 u55, 2 l45 d49, 3 r30 u33, 4 l70 d64",
        "1 l50 d46, 2 r55 u58, 3 l62 d67, 4 r38 u35",
        "1 l20 d25, 2 r10 u8, 3 r66 u61, 4 l41 d36",
    ];
    let once = rounds(slant);
    assert!(once.contains("slanting from low left to high right"), "{once}");
    assert!(once.contains("A slant from one distance names no cause"), "{once}");
    let folder = dozen();
    for distance in ["18m", "30m"] {
        for line in slant {
            enter(&folder, distance, "field", line);
        }
    }
    let twice = said(&folder, "");
    assert!(twice.contains("whether bow and sight stand level"), "{twice}");
    let round = rounds([
        "1 r10 d3, 2 l5 u12, 3 r3 u4, 4 l7 d15",
        "1 l5 u4, 2 r15 d4, 3 l12 d11, 4 r8 u10",
        "1 l2 d12, 2 r10 u3, 3 r6 u2, 4 l11 u5",
    ]);
    assert!(!round.contains("The shape"), "{round}");
}
