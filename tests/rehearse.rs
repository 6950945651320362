//! `rehearse`: what a dozen will take.

use serde_json::Value;

use crate::support::Folder;

/// A small and quick one.
const SMALL: &str =
    "rehearse --group 40mm --distance 18.3m --tolerance 40mm --shafts 2 --dozens 20";

/// The cases of a rehearsal of two shafts.
fn cases(arguments: &str) -> Vec<Value> {
    let folder = Folder::new();
    let answer = folder.run(&format!("rehearse {arguments} --shafts 2 --dozens 20 --json")).json();
    answer["cases"].as_array().unwrap().clone()
}

#[test]
fn it_says_what_it_takes_and_what_else_would_do() {
    let folder = Folder::new();
    let said = folder.run(SMALL).stdout_has("Rehearsed on 20 invented dozens: 2 shafts").check();
    for part in
        ["median", "evenings of 36 bare shots", "from 13.", "tolerance 60 mm", "Open at the end"]
    {
        assert!(said.contains(part), "{part}:\n{said}");
    }
    assert!(said.lines().all(|line| line.chars().count() <= 80), "{said}");
    assert_eq!(folder.names(), [""; 0], "something was written");
}

#[test]
fn a_seed_plays_the_same_and_another_another() {
    let play =
        |seed: &str| Folder::new().run(&format!("{SMALL} --seed {seed}")).any_stdout().check();
    assert_eq!(play("1"), play("1"));
    assert_ne!(play("1"), play("2"));
}

/// A small group and a wide tolerance are soon done; a wide group and a narrow one are not.
#[test]
fn a_wider_group_takes_more_shots() {
    let shots = |answer: &[Value]| answer[0]["shots"]["median"].as_u64().unwrap();
    let (narrow, wide) = (
        cases("--group 40mm --distance 18.3m --tolerance 40mm"),
        cases("--group 120mm --distance 18.3m --tolerance 20mm"),
    );
    assert!(shots(&narrow) < shots(&wide), "{} and {}", shots(&narrow), shots(&wide));
    for case in narrow.iter().chain(&wide) {
        let bounds = ["from", "median", "to"].map(|name| case["shots"][name].as_u64().unwrap());
        assert!(bounds.is_sorted() && bounds[0] > 0, "{bounds:?}");
        assert!(case["ends"]["median"].as_u64() <= case["shots"]["median"].as_u64());
    }
}

#[test]
fn the_alternatives_are_those_that_are_said() {
    let named = |arguments: &str| -> Vec<(String, f64, f64, String)> {
        let number = |case: &Value, name: &str| case[name].as_f64().unwrap();
        let text = |case: &Value, name: &str| case[name].as_str().unwrap().to_owned();
        let of = |case: &Value| {
            let (distance_m, tolerance_mm) =
                (number(case, "distance_m"), number(case, "tolerance_mm"));
            (text(case, "case"), distance_m, tolerance_mm, text(case, "leans"))
        };
        let asked = format!("--group 40mm --distance 20m --tolerance 40mm {arguments}");
        cases(&asked).iter().map(of).collect()
    };
    let case = |case: &str, distance_m: f64, tolerance_mm: f64, leans: &str| {
        (case.to_owned(), distance_m, tolerance_mm, leans.to_owned())
    };
    let same = ["", "--no-leans"].map(named);
    assert_eq!(
        same[0],
        [
            case("as asked", 20.0, 40.0, "read"),
            case("closer", 15.0, 40.0, "read"),
            case("wider tolerance", 20.0, 60.0, "read"),
        ]
    );
    assert_eq!(same[1][0], case("as asked", 20.0, 40.0, "not read"));
    assert_eq!(same[1][3], case("leans read", 20.0, 40.0, "read"));
}

#[test]
fn who_reads_inches_is_answered_in_inches() {
    let inches =
        "rehearse --group 2 --distance 20yd --tolerance 1.5in --units in --shafts 1 --dozens 20";
    let folder = Folder::new();
    let run = folder.run(inches).stdout_has("at 20 yd, tolerance 1.5 in");
    run.stdout_has("in a circle 2 in").check();
}
