//! `heads`: finished arrows are recorded, and broadheads compared with field points.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

/// A journal of six shafts, all fletched.
pub fn dozen() -> Folder {
    let folder = Folder::begun("1-6");
    for shaft in 1..=6 {
        folder.run(&format!("shaft {JOURNAL} {shaft} --fletched")).any_stdout().check();
    }
    folder
}

/// Records a group from `distance`; what is said back is the concern of another test.
pub fn enter(folder: &Folder, distance: &str, head: &str, line: &str) {
    let run = folder.run(&format!("heads {JOURNAL} --distance {distance} --head"));
    run.arg(head).arg(line).any_stdout().check();
}

const FIELD: &str = "1 r10 u5, 2 l8 d12, 3 r14 u20, 4 l15 u3, 5 d18, 6 r4 d2";

/// Six of each from 20 and from 40 yards: 18 right near, 120 right and 40 low far off.
pub fn shoot(folder: &Folder) {
    enter(folder, "20yd", "field", FIELD);
    enter(folder, "20yd", "head A", "1 r30 u5, 2 r8 d12, 3 r34 u14, 4 r3 d3, 5 r15 d18, 6 r22 d2");
    enter(folder, "40yd", "field", "1 r20 u5, 2 l18 d32, 3 r24 u40, 4 l25 d17, 5 r10 d28, 6 0");
    enter(
        folder,
        "40yd",
        "head A",
        "1 r140 d35, 2 r102 d72, 3 r144, 4 r95 d57, 5 r130 d68, 6 r120 d40",
    );
}

fn shown(folder: &Folder, together: &str) -> Value {
    folder.run(&format!("heads {JOURNAL} --json --together {together}")).json()["heads"][0].clone()
}

#[test]
fn a_group_is_said_back_with_the_cautions_and_can_be_taken_back() {
    let folder = dozen();
    let before = folder.next();
    let run = folder.run(&format!("heads {JOURNAL} --distance 20yd --head")).arg("head A");
    let said = run.arg("2 r3 u2, 5 l1 d4 p, 6 x").any_stdout().check();
    assert!(said.lines().all(|line| line.chars().count() <= 80), "{said}");
    let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
    for part in [
        "Recorded: 3 shots with the broadhead head A from 18.29 m.",
        "2 3 mm right, 2 mm high",
        "5 1 mm left, 4 mm low kept, and left out",
        "If 6 is lost, record that too: quarterturn shaft evening.journal 6 --lost",
        "One arrow to a spot",
        "covered",
        "a wrench",
        "butt of their own",
        "Never a broadhead on a bare shaft.",
    ] {
        assert!(said.contains(part), "{part} in\n{said}");
    }
    assert_eq!(folder.next(), before, "the flight model of the bare shafts is not touched");
    let field = folder.run(&format!("heads {JOURNAL} --cold")).arg("2 0").any_stdout().check();
    assert!(field.starts_with("Recorded: 1 shot with field points from 18.3 m, the first of"));
    assert!(!field.contains("butt of their own"), "{field}");
    let log = folder.run(&format!("log {JOURNAL}")).any_stdout().check();
    let log = log.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(log.contains("head A from 18.29 m: 2 i12 r3 u2, 5 i12 l1 d4 p, 6 i12 x"), "{log}");
    assert!(log.contains("field from 18.3 m, cold: 2 i12 0"), "{log}");
    folder
        .run(&format!("undo {JOURNAL}"))
        .stdout_has("Taken back: a group of 1 shot with finished arrows")
        .check();
}

#[test]
fn before_anything_was_shot_it_says_what_to_enter() {
    let said = dozen().run(&format!("heads {JOURNAL}")).any_stdout().check();
    let said = said.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(said.starts_with("No broadhead was shot beside field points yet"), "{said}");
    assert!(said.contains("quarterturn heads evening.journal \"7 r3 u2, 9 l1 d4\""), "{said}");
}

#[test]
fn every_verdict_is_said_in_words() {
    let folder = dozen();
    shoot(&folder);
    let plain = folder.run(&format!("heads {JOURNAL}")).any_stdout().check();
    for part in ["18.29 m  6 and 6  ", "Say how near is together for you", " apart, at 95 %."] {
        assert!(plain.contains(part), "{part} in\n{plain}");
    }
    let at = |together: &str, place: usize| shown(&folder, together)["distances"][place].clone();
    let said = |together: &str, place: usize| at(together, place)["text"].clone();
    assert_eq!(said("60mm", 0), "together within 60 mm, at 95 %");
    assert_eq!(said("60mm", 1), "apart by more than 60 mm, at 95 %");
    let open = at("20mm", 0);
    assert_eq!(open["verdict"], "open");
    let hardly = said("18.6mm", 0);
    assert!(hardly.as_str().unwrap().contains("60 more of each would hardly tell"), "{hardly}");
    let some = at("30mm", 0);
    let more = &some["more_of_each"];
    let text = format!("cannot say yet: about {more} more of each, if they go on like this");
    assert_eq!(some["text"], json!(text));
    enter(&folder, "27m", "head A", "1 r3, 2 l4 u5");
    assert_eq!(said("60mm", 1), "cannot say yet: three of each must count");
    enter(&folder, "27m", "field", "1 r3, 2 l4, 3 0");
    enter(&folder, "27m", "head A", "3 r9 u5");
    let line = folder.run(&format!("heads {JOURNAL} --distance 15m")).arg("1 r3, 2 l4, 3 0");
    line.any_stdout().check();
    enter(&folder, "15m", "head A", "1 r3, 2 l4, 3 0");
    assert_eq!(said("60mm", 0), "cannot say: the hits lie on one line, as nobody shoots");
}

#[test]
fn growth_is_said_in_words_and_how_sure_it_is() {
    let grows = |near: &str, far: &str, together: &str| {
        let folder = dozen();
        enter(&folder, "18m", "field", FIELD);
        enter(&folder, "36m", "field", FIELD);
        enter(&folder, "18m", "head A", near);
        enter(&folder, "36m", "head A", far);
        let growth = shown(&folder, together)["growth"].clone();
        (growth["grows"].clone(), growth["text"].as_str().unwrap().to_owned())
    };
    let at = |x: i32| {
        let hits = [[10, 5], [-8, -12], [14, 20], [-15, 3], [0, -18], [4, -2]];
        let shot = |(n, [dx, y]): (usize, [i32; 2])| {
            let side =
                |mm: i32, plus, minus| format!("{}{}", if mm < 0 { minus } else { plus }, mm.abs());
            format!("{} {} {}", n + 1, side(x + dx, "r", "l"), side(y, "u", "d"))
        };
        hits.into_iter().enumerate().map(shot).collect::<Vec<_>>().join(", ")
    };
    for (near, far, together, word, sentence) in [
        (40, 80, "50mm", "in proportion", "in proportion to the distance, within 50 mm"),
        (40, 200, "50mm", "faster", "faster than in proportion, more than 99 % sure"),
        (100, 100, "50mm", "slower", "slower than in proportion, more than 99 % sure"),
        (40, 85, "10mm", "open", "cannot be said yet"),
        (1, 2, "50mm", "no difference", "no difference is sure from 18 m to 36 m"),
    ] {
        let (found, said) = grows(&at(near), &at(far), together);
        assert_eq!(found, word, "{said}");
        assert!(said.contains(sentence), "{said}");
    }
}

#[test]
fn a_changed_bow_begins_anew_and_says_so() {
    let folder = dozen();
    shoot(&folder);
    folder.run(&format!("bow {JOURNAL} --note sight --part sight")).any_stdout().check();
    for command in ["heads", "reach"] {
        let run = folder.run(&format!("{command} {JOURNAL}"));
        run.stdout_has("Left out: 4 groups shot before the bow or its sight was changed").check();
        let answer = folder.run(&format!("{command} {JOURNAL} --json")).json();
        assert_eq!((&answer["groups"], &answer["groups_left_out"]), (&json!(0), &json!(4)));
    }
}
