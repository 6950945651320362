//! `quiver`: the order, the heads, the season, what to look at again, and the archer's own limits.

use serde_json::{Value, json};

use crate::heads::{dozen, enter};
use crate::support::{Folder, JOURNAL};

fn tell(folder: &Folder, line: &str) -> String {
    folder.run(&line.replace("J ", &format!("{JOURNAL} "))).any_stdout().check()
}

/// The screen with its lines joined.
fn said(folder: &Folder) -> String {
    let said = tell(folder, "quiver J ");
    assert!(said.lines().all(|line| line.chars().count() <= 80), "{said}");
    said.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn told(folder: &Folder) -> Value {
    folder.run(&format!("quiver {JOURNAL} --json")).json()
}

/// Six arrows, three of them in the quiver with heads of their own, after a short season.
pub fn season() -> Folder {
    let folder = dozen();
    for (arrow, head, mass, runout) in [
        ("2", "A", "100.2gr", "0.1mm"),
        ("5", "B", "99.1gr", "0mm"),
        ("6", "C", "103.1gr", "0.5mm"),
    ] {
        tell(
            &folder,
            &format!(
                "quiver J {arrow} --carries {head} --head-mass {mass} --runout {runout} --width 27mm"
            ),
        );
    }
    enter(&folder, "20yd", "fixed blades", "2 r3 u2, 5 l4, 6 d12");
    tell(&folder, "quiver J --order 5,2,6");
    tell(&folder, "shaft J 5 --checked --on 2027-08-30");
    tell(&folder, "shaft J 2 --hard-hit --on 2027-09-03");
    tell(&folder, "shaft J 6 --new-nock --on 2027-09-04");
    tell(&folder, "bench J 5 --finished-mass 428gr");
    tell(&folder, "bench J 2 --finished-mass 299gr");
    tell(
        &folder,
        "quiver J --read-on 2027-07-30 --least-mass 300gr --least-draw 40lb --draw 60lb --least-width 22mm",
    );
    folder
}

#[test]
fn the_card_has_order_heads_checks_shots_and_turns() {
    let folder = season();
    let screen = said(&folder);
    for part in [
        "1 5 12 o'clock B, 99.1 gr, 0 mm 2027-08-30 1 0, 8 left",
        "3 6 12 o'clock C, 103.1 gr, 0.5 mm never 1 0, 8 left",
        "- 1 12 o'clock never 0",
        "Hard hits, not checked since: 2 (on 2027-09-03). After a hard hit: flex and twist",
        "New nocks, not checked since: 6 (on 2027-09-04). After a new nock: set it from the ink mark",
        "Never recorded as checked: 2 and 6.",
        "Your limits, as you read them on 2027-07-30:",
        "Arrow at least 300 gr: kept by 5; NOT KEPT by 2; no finished mass entered of 6.",
        "Draw at least 40 lb: 60 lb, kept.",
        "Head at least 22 mm wide: kept by 5, 2 and 6.",
        "The season: 3 shots in 0 ends and 1 group of finished arrows.",
        "2027-09-03 2: hard hit",
        "Broadheads stay in a covered quiver",
        "it holds no law of its own",
        "look for them in the meat",
    ] {
        assert!(screen.contains(part), "{part} in\n{screen}");
    }
    tell(&folder, "shaft J 2 --checked");
    tell(&folder, "shaft J 6 --checked");
    let screen = said(&folder);
    assert!(!screen.contains("Hard hits") && !screen.contains("New nocks"), "{screen}");
    assert!(!screen.contains("Never recorded"), "{screen}");
}

#[test]
fn what_happens_is_said_with_what_to_look_at_again() {
    let folder = dozen();
    let hit = tell(&folder, "shaft J 2 --hard-hit");
    assert!(hit.starts_with("After a hard hit: flex and twist the shaft"), "{hit}");
    let nock = tell(&folder, "shaft J 2 --new-nock");
    assert!(nock.contains("set it from the ink mark again"), "{nock}");
    let string = tell(&folder, "bow J --note served --part string");
    let string = string.split_whitespace().collect::<Vec<_>>().join(" ");
    for part in ["no arrow's mark is", "Groups from before", "Recorded: the string was changed"] {
        assert!(string.contains(part), "{part} in\n{string}");
    }
    assert!(said(&folder).contains("and no group was shot since. After a new string"));
    enter(&folder, "20yd", "field", "1 r3");
    assert!(!said(&folder).contains("The string was renewed"));
}

#[test]
fn a_fletched_arrow_has_its_mark_where_fletch_said() {
    let folder = Folder::begun("1-2");
    let recorded = tell(&folder, "shaft J 1 --fletched --index 100");
    assert!(recorded.starts_with("Recorded: 1 is fletched, its mark at 100 deg"), "{recorded}");
    assert_eq!(told(&folder)["arrows"][0]["index_deg"], 100.0);
    assert_eq!(told(&folder)["arrows"][0]["nock_turns"], 1);
}

#[test]
fn before_anything_is_fletched_or_ordered_the_way_on_is_said() {
    let screen = said(&Folder::begun("1-2"));
    assert!(screen.contains("- R 12 o'clock"), "{screen}");
    assert!(screen.contains("No order yet: quarterturn quiver evening.journal --order 2,9,4"));
    let folder = Folder::begun("1-2");
    tell(&folder, "shaft J R --lost");
    assert!(said(&folder).contains("No arrow is fletched yet"));
}

#[test]
fn the_heads_of_a_group_are_those_on_the_arrows() {
    let folder = season();
    enter(&folder, "20yd", "field", "2 r6 u2, 5 l6, 6 d2");
    enter(&folder, "20yd", "field", "2 r2 u9, 5 l12 d3, 6 r5 d8");
    enter(&folder, "20yd", "fixed blades", "2 r12 u6, 5 r4 u9, 6 r8 d190");
    enter(&folder, "20yd", "fixed blades", "2 r2 d6, 5 l14 d2, 6 l4 d203");
    enter(&folder, "20yd", "fixed blades", "2 l8 d1, 5 l2 u5, 6 l9 d188");
    // The first one had another truth.
    let screen = tell(&folder, &format!("heads {JOURNAL} --together 30mm"));
    assert!(screen.lines().all(|line| line.chars().count() <= 80), "{screen}");
    assert!(screen.contains("  6      C        2 and 4"), "{screen}");
    assert!(screen.contains("C, 103.1 gr, 0.5 mm"), "{screen}");
    let answer = folder.run(&format!("heads {JOURNAL} --json --together 30mm")).json();
    let pairs = answer["heads"][0]["distances"][0]["pairs"].as_array().unwrap();
    let told: Vec<_> = pairs.iter().map(|pair| (&pair["shaft"], &pair["carries"])).collect();
    assert_eq!(
        told,
        [(&json!("2"), &json!("A")), (&json!("5"), &json!("B")), (&json!("6"), &json!("C"))]
    );
    assert_eq!(pairs[2]["runout_mm"], 0.5);
}

#[test]
fn a_head_that_steers_its_arrow_is_named_with_the_way_on() {
    let folder = season();
    tell(&folder, "undo J ");
    for line in ["2 r6 u2, 5 l6, 6 d2", "2 r2 u9, 5 l12 d3, 6 r5 d8", "2 l3 u1, 5 r3 d9, 6 l6 u4"] {
        enter(&folder, "30m", "field", line);
    }
    for line in [
        "2 r12 u6, 5 r4 u9, 6 r8 d190",
        "2 r2 d6, 5 l14 d2, 6 l4 d203",
        "2 l8 d1, 5 l2 u5, 6 l9 d188",
    ] {
        enter(&folder, "30m", "fixed blades", line);
    }
    let screen = tell(&folder, &format!("heads {JOURNAL} --together 50mm"));
    let screen = screen.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(screen.contains("6 with C from 30 m: its head takes it"), "{screen}");
    assert!(screen.contains("put another head on it, record that with quiver"), "{screen}");
}

#[test]
fn the_printed_card_has_every_arrow_and_the_limits() {
    let folder = season();
    let print = "Print at actual size (100 %), then lay a rule on the bars.\n";
    let card = folder.run(&format!("paper quiver {JOURNAL}"));
    card.stdout(&format!("1 sheet in evening-quiver.pdf.\n{print}")).check();
    tell(&folder, &format!("paper quiver {JOURNAL} -o card.svg --paper letter"));
    let card = folder.read("card.svg");
    for part in [
        ">The quiver<",
        ">C, 103.1 gr, 0.5 mm<",
        ">2027-08-30<",
        "NOT KEPT by 2",
        "covered quiver",
        ">100 mm<",
    ] {
        assert!(card.contains(part), "{part} in\n{card}");
    }
}

#[test]
fn a_group_comes_in_as_json_and_whole_through_an_export() {
    let folder = season();
    let group = json!({"distance_m": 27.4, "head": "fixed blades", "at": "2027-09-05T17:00:00Z",
        "shots": [{"shaft": "2", "x_mm": 3, "y_mm": -4}, {"shaft": "6", "x_mm": 1, "y_mm": 2}]});
    let run = folder.run(&format!("heads {JOURNAL} --json -")).stdin(&group.to_string());
    let recorded = run.json();
    assert_eq!(recorded["mounted"], json!({"2": "A", "6": "C"}));
    let exported = folder.run(&format!("export {JOURNAL} --json")).any_stdout().check();
    folder.write("all.json", &exported);
    folder.run("import other.journal all.json").any_stdout().check();
    let quiver = |journal: &str| folder.run(&format!("quiver {journal} --json")).json();
    let (one, other) = (quiver(JOURNAL), quiver("other.journal"));
    assert_eq!(one["arrows"], other["arrows"]);
    let heads = |journal: &str| folder.run(&format!("heads {journal} --json")).json();
    assert_eq!(heads(JOURNAL), heads("other.journal"));
}

#[test]
fn what_was_said_is_in_the_log_and_can_be_taken_back() {
    let folder = season();
    let log = tell(&folder, "log J ").split_whitespace().collect::<Vec<_>>().join(" ");
    for part in [
        "6 carries C, mass 103.1 gr, runout 0.5 mm, width 27 mm",
        "quiver: 5, 2, 6",
        "limits read on 2027-07-30, arrow at least 300 gr, draw at least 40 lb",
        "2: hard hit on 2027-09-03",
    ] {
        assert!(log.contains(part), "{part} in\n{log}");
    }
    let undone = tell(&folder, "undo J ");
    assert!(undone.starts_with("Taken back: a word about the quiver"), "{undone}");
    assert_eq!(told(&folder).get("limits"), None);
}
