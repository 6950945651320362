//! `show`: how every shaft stands.

use serde_json::json;

use crate::support::{Folder, JOURNAL};

#[test]
fn every_shaft_is_shown_with_its_verdict_and_its_reason() {
    let folder = Folder::with_an_end();
    folder.run(&format!("shaft {JOURNAL} 3 --broken")).any_stdout().check();
    let said = folder
        .run(&format!("show {JOURNAL}"))
        .stdout_has("18.3 m")
        .stdout_has("25 mm")
        .stdout_has("broken")
        .stdout_has("Common offset")
        .stdout_has("Your own group")
        .check();
    for shaft in folder.next()["shafts"].as_array().unwrap() {
        let reason = shaft["reason"].as_str().unwrap();
        assert!(said.contains(reason), "`{reason}` is not in\n{said}");
    }
    assert!(!said.contains("NaN") && !said.contains("inf "), "{said}");
}

#[test]
fn the_same_in_json_agrees_with_next() {
    let folder = Folder::with_an_end();
    let show = folder.run(&format!("show {JOURNAL} --json")).json();
    let next = folder.next();
    assert_eq!(show["bow"], next["bow"]);
    for (shown, judged) in
        show["shafts"].as_array().unwrap().iter().zip(next["shafts"].as_array().unwrap())
    {
        for (name, value) in judged.as_object().unwrap() {
            assert_eq!(&shown[name], value, "{name} of {}", judged["shaft"]);
        }
        assert_eq!(shown["at_positions"].as_array().unwrap().len(), 12);
    }
    assert!(show.get("archer").is_none(), "no shaft was shot twice at one mark");
}

#[test]
fn the_archers_group_comes_with_its_interval_and_how_much_it_rests_on() {
    let folder = Folder::begun("1-3");
    for (x_mm, y_mm) in [(0, 10), (20, -10), (-20, 5), (8, 0)] {
        folder.enter(&json!({"evening": "2027-03-02", "shots": [
            {"shaft": "R", "x_mm": 0, "y_mm": 0}, {"shaft": "1", "x_mm": x_mm, "y_mm": y_mm}
        ]}));
    }
    let archer = &folder.run(&format!("show {JOURNAL} --json")).json()["archer"];
    let number = |value: &serde_json::Value| value.as_f64().unwrap();
    let (low, high) = (number(&archer["interval_mm"][0]), number(&archer["interval_mm"][1]));
    let spread = number(&archer["spread_mm"]);
    assert!(low < spread && spread < high, "{archer}");
    assert!(archer["degrees_of_freedom"].as_u64().unwrap() > 0);
}

#[test]
fn people_are_answered_in_their_own_unit() {
    let folder = Folder::new();
    let new = folder.run(&format!("new {JOURNAL} --shafts 1-3 --reference R --units in"));
    new.args("--distance 20yd --tolerance 1in").any_stdout().check();
    folder.run(&format!("show {JOURNAL}")).stdout_has("20 yd").stdout_has("1 in").check();
}

#[test]
fn shots_and_shafts_that_stand_out_are_named_with_what_they_change() {
    let folder = Folder::begun("1-3");
    let near = [(0, 9), (12, -7), (-11, 4), (6, -12), (-8, -6), (10, 10)];
    for (end, (x_mm, y_mm)) in near.into_iter().enumerate() {
        let far = if end == 3 { 160 } else { 0 };
        folder.enter(&json!({"evening": "2027-03-02", "shots": [
            {"shaft": "R", "x_mm": y_mm, "y_mm": x_mm},
            {"shaft": "1", "x_mm": x_mm + far, "y_mm": y_mm},
            {"shaft": "2", "x_mm": 7 - y_mm, "y_mm": x_mm - 9},
        ]}));
    }
    let said = folder.run(&format!("show {JOURNAL}")).stdout_has("Stands out: 1 in end 4").check();
    let show = folder.run(&format!("show {JOURNAL} --json")).json();
    let out = &show["standing_out"];
    assert_eq!(out["shots"].as_array().unwrap().len(), 1, "{out}");
    assert_eq!((&out["shots"][0]["shaft"], &out["shots"][0]["end"]), (&json!("1"), &json!(4)));
    let number = |name: &str| out["shots"][0][name].as_f64().unwrap();
    assert!(number("spread_without_mm") < number("spread_mm") / 2.0, "{out}");
    assert_eq!(show["archer"]["spread_mm"], out["shots"][0]["spread_mm"]);
    assert_eq!(out["shafts"][0]["shaft"], "1");
    assert!(out["shafts"][0]["times"].as_f64().unwrap() > 3.0, "{out}");
    assert!(said.contains("1 spreads"), "{said}");
    let svg = folder.run(&format!("plot {JOURNAL} -o -")).any_stdout().check();
    assert!(svg.contains("*6</text>") && svg.contains("* too wide"), "{svg}");
}

#[test]
fn nothing_stands_out_where_all_is_alike() {
    let folder = Folder::with_an_end();
    let said = folder.run(&format!("show {JOURNAL}")).any_stdout().check();
    assert!(!said.contains("Stands out"), "{said}");
    assert!(folder.run(&format!("show {JOURNAL} --json")).json().get("standing_out").is_none());
}

#[test]
fn shots_too_old_to_be_read_are_said() {
    let folder = Folder::begun("1-2");
    // Twenty shots more than are read.
    let end = |end| format!("{end},R,1,2\n{end},1,5,{}\n", end % 4);
    let table: String = (1..=1510).map(end).collect();
    folder.write("shots.csv", &format!("end,shaft,x_mm,y_mm\n{table}"));
    folder.run(&format!("import {JOURNAL} shots.csv")).any_stdout().check();
    let said = "Shots: those at this mark of all that count. The\noldest 20 are kept, and no longer read for the misses.";
    folder.run(&format!("show {JOURNAL}")).stdout_has(said).check();
    let show = folder.run(&format!("show {JOURNAL} --json")).json();
    assert_eq!(
        (&show["older_shots"], &show["shafts"][0]["shots_total"]),
        (&json!(20), &json!(1510))
    );
}
