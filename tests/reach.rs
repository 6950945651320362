//! `reach`: the chance on a plate against the distance, how far it is shown, and what stands under it.

use serde_json::{Value, json};

use crate::heads::{dozen, enter, shoot};
use crate::support::{Folder, JOURNAL};

fn reached(folder: &Folder, options: &str) -> Value {
    folder.run(&format!("reach {JOURNAL} --json {options}")).json()
}

/// The screen with its lines joined.
fn said(folder: &Folder, options: &str) -> String {
    let said = folder.run(&format!("reach {JOURNAL} {options}")).any_stdout().check();
    assert!(said.lines().all(|line| line.chars().count() <= 80), "{said}");
    said.split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn the_screen_says_what_it_is_not() {
    let folder = dozen();
    for said in [said(&folder, ""), {
        shoot(&folder);
        said(&folder, "")
    }] {
        for part in [
            "an upper bound for practice",
            "only make it worse",
            "no advice to shoot at game",
            "Local law and licensed instruction come before",
        ] {
            assert!(said.contains(part), "{part} in\n{said}");
        }
    }
}

#[test]
fn before_five_shots_of_a_kind_nothing_is_said() {
    let folder = dozen();
    let nothing = "Nothing can be said yet: five shots of one kind from one distance must count";
    assert!(said(&folder, "").contains(nothing));
    enter(&folder, "20yd", "field", "1 r3, 2 l4 u5, 3 d6, 4 u9");
    let said = said(&folder, "");
    assert!(said.contains(nothing) && said.contains("field points 4 of 4 too few"), "{said}");
    assert_eq!(reached(&folder, "").get("farthest"), None);
}

#[test]
fn the_worst_kind_counts_and_cold_shots_are_kept_apart() {
    let folder = dozen();
    shoot(&folder);
    for line in ["1 r95 u30", "1 l90 d60", "2 u99", "2 r20 d95", "1 l30 u90"] {
        let cold = folder.run(&format!("heads {JOURNAL} --cold --distance 20yd")).arg(line);
        cold.any_stdout().check();
    }
    let near = &reached(&folder, "")["distances"][0];
    let kinds = near["kinds"].as_array().unwrap();
    let told: Vec<_> =
        kinds.iter().map(|kind| (&kind["head"], &kind["cold"], &kind["counts"])).collect();
    let (field, head) = (json!("field"), json!("head A"));
    let (yes, no) = (json!(true), json!(false));
    assert_eq!(told, [(&field, &no, &no), (&field, &yes, &yes), (&head, &no, &no)]);
    assert_eq!((&kinds[1]["shots"], &kinds[1]["on_plate"]), (&json!(5), &json!(4)));
    let lines = said(&folder, "");
    assert!(lines.contains("field points, cold 4 of 5 "), "{lines}");
}

#[test]
fn a_reach_ends_at_the_shots_or_at_the_chance() {
    let folder = dozen();
    shoot(&folder);
    assert!(said(&folder, "--plate 2m").contains(
        "A chance of 90 % is shown up to 36.58 m, the farthest you shot from; beyond it nothing is."
    ));
    let ends = reached(&folder, "");
    assert_eq!(ends["farthest"]["ended_by"], "chance");
    let metres = ends["farthest"]["distance_m"].as_f64().unwrap();
    let sentence = format!("A chance of 90 % is shown up to {} m, and not farther", metres.floor());
    assert!(said(&folder, "").contains(&sentence), "{sentence}");
    let surer = reached(&folder, "--chance 0.99");
    assert!(surer["farthest"]["distance_m"].as_f64().unwrap() < metres);
    assert!(said(&folder, "--plate 2mm").contains("A chance of 90 % is shown at no distance."));
    assert_eq!(ends, reached(&folder, "--plate 200mm --chance .9"));
}

#[test]
fn a_shot_that_nobody_found_is_told_beside_the_chances() {
    let folder = dozen();
    shoot(&folder);
    enter(&folder, "20yd", "field", "1 x, 2 x p");
    let said = said(&folder, "");
    assert!(said.contains("Besides, 1 shot without a hit and not called poor"), "{said}");
}
