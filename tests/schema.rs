//! Every answer is what the published schemas say, and every published schema is held against an answer.

use serde_json::{Value, json};

use crate::support::repository::sources;
use crate::support::schema::Schema;
use crate::support::{Folder, JOURNAL};
use crate::{bench, bow, checklist, cut, fletch, glue, heads, hints, photo, quiver, verify};

const FOLDER: &str = "docs/schema";

#[test]
fn every_answer_is_as_its_schema_says() {
    let schemas: Vec<_> =
        sources(FOLDER).iter().map(|source| Schema::parse(&source.text)).collect();
    let mut unused: Vec<_> = schemas.iter().map(Schema::name).collect();
    for answer in answers() {
        let name = answer["schema"].as_str().expect("an answer names its schema");
        let schema = schemas.iter().find(|schema| schema.name() == name);
        let schema = schema.unwrap_or_else(|| panic!("no schema in {FOLDER} is for {name}"));
        assert_eq!(schema.faults(&answer), Vec::<String>::new(), "{name}");
        unused.retain(|unused| *unused != name);
    }
    assert!(unused.is_empty(), "nothing answers as {unused:?} say");
}

/// An answer of every command that gives JSON, and of some more than one, on an evening with a bit of everything.
fn answers() -> Vec<Value> {
    let folder = Folder::new();
    let ask = |line: &str| folder.run(&line.replace("J ", &format!("{JOURNAL} --json "))).json();
    let new =
        "--shafts 1-3 --reference R,S --distance 18.3m --tolerance 1in --units in --hand left";
    let mut answers =
        vec![ask(&format!("new J {new} --bare-lighter 20gr --index 2=30")), ask("next J ")];
    for x_mm in [10, 14, -3] {
        let end = json!({"evening": "2027-03-02", "note": "light breeze", "shots": [
            {"shaft": "R", "x_mm": 3, "y_mm": -12, "lean_x_deg": 0.5, "lean_y_deg": 0},
            {"shaft": "1", "x_mm": x_mm, "y_mm": 8, "lean_x_deg": -2.5, "lean_y_deg": 1, "lean_sd_deg": 1},
            {"shaft": "2", "x_mm": -4, "y_mm": 15, "call": "poor", "flags": ["wind"], "read_sd_mm": 2},
        ]});
        answers.push(folder.run(&format!("end {JOURNAL} --json -")).stdin(&end.to_string()).json());
    }
    let read = r#"{"shots":[{"shaft":"R","x_mm":0,"y_mm":0},
        {"shaft":"1","out_mm":31,"toward_deg":60,"tail_x_mm":-20,"tail_y_mm":3,"protruding_mm":620},
        {"shaft":"2","x_mm":0,"y_mm":0,"tail_seen":"some","tail_toward_deg":90}]}"#;
    answers.push(folder.run(&format!("end {JOURNAL} --json -")).stdin(read).json());
    let line = [
        "fix J 4 --exchange 1,2",
        "note J dusk",
        "shaft J 4 --add --index 30",
        "undo J ",
        "redo J ",
    ];
    answers.extend(line.map(ask));
    answers.extend(["log J ", "export J "].map(ask));
    let table = folder.run(&format!("import {JOURNAL} - --json")).stdin("shaft,x_in,y_in\nR,0,1\n");
    answers.push(table.json());
    let rest = [
        "shaft J 3 --broken",
        "bow J --note rest --part rest --move-mm -0.8,0",
        "undo J ",
        "bow J --leave tonight",
        "next J ",
        "show J ",
    ];
    answers.extend(rest.map(ask));
    answers.extend(answers_about_finished_arrows());
    answers.extend(answers_about_the_file());
    answers.extend(answers_about_the_program(&folder));
    answers.extend([bench::recorded(), bench::set(), fletch::answer(), cut::answer()]);
    answers.extend(glue::answers().into_iter().chain(checklist::answers()));
    answers.extend(photo::answers());
    let rehearse =
        "rehearse --group 40mm --distance 18.3m --tolerance 40mm --shafts 1 --dozens 20 --json";
    answers.push(folder.run(rehearse).json());
    for journal in [hints::exchanged(), hints::doubtful()] {
        let ask = |command: &str| journal.run(&format!("{command} {JOURNAL} --json")).json();
        answers.extend(["next", "show"].map(ask));
    }
    answers.extend(
        ["next", "show"]
            .map(|command| bow::measured().run(&format!("{command} {JOURNAL} --json")).json()),
    );
    answers
}

/// Of what explains the program, and of what writes files.
fn answers_about_the_program(folder: &Folder) -> Vec<Value> {
    let ask = |line: &str| folder.run(&line.replace("J ", &format!("{JOURNAL} --json "))).json();
    let lines = [
        "explain keep --json",
        "explain --json",
        "manual man1 --json",
        "plot J ",
        "report J ",
        "demo d --json",
    ];
    let config = folder.run("config --json").variable("QUARTERTURN_NEW_UNITS", "in").json();
    lines.map(ask).into_iter().chain([config]).collect()
}

/// Of `heads` and `reach`, before anything was shot, with little and with more.
fn answers_about_finished_arrows() -> Vec<Value> {
    let folder = heads::dozen();
    let ask = |line: &str| folder.run(&line.replace("J ", &format!("{JOURNAL} --json "))).json();
    let mut answers = vec![ask("heads J "), ask("reach J ")];
    heads::shoot(&folder);
    let cold = folder.run(&format!("heads {JOURNAL} --cold --json --distance 20yd --head"));
    answers.push(cold.arg("head B").arg("2 2h8").json());
    answers
        .extend(["heads J ", "heads J --together 50mm", "reach J ", "undo J ", "redo J "].map(ask));
    let verified = heads::dozen();
    let ask = |line: &str| verified.run(&format!("verify {JOURNAL} --json {line}")).json();
    answers.push(ask(""));
    verify::shoot(&verified);
    answers.extend([ask(""), ask("--eye-to-pin 85cm")]);
    let season = quiver::season();
    let ask = |line: &str| season.run(&line.replace("J ", &format!("{JOURNAL} --json "))).json();
    let lines = [
        "quiver J ",
        "quiver J --order 2",
        "quiver J 3 --carries D",
        "quiver J --read-on 2027-07-30 --least-draw 40lb",
        "undo J ",
        "shaft J 3 --hard-hit --on 2027-09-01",
    ];
    answers.extend(lines.map(ask));
    heads::enter(&season, "20yd", "field", "2 r6 u2, 5 l6, 6 d2");
    heads::enter(&season, "20yd", "fixed blades", "2 r12 u6, 5 r4 u9, 6 r8 d90");
    answers.push(ask("heads J --together 50mm"));
    answers
}

/// Of `check` and `repair`, on a journal that is whole and on one that lacks a line, has one twice, and is torn.
fn answers_about_the_file() -> Vec<Value> {
    let folder = Folder::with_an_end();
    for change in ["lost", "repaired", "set-aside", "readmit"] {
        folder.run(&format!("shaft {JOURNAL} 3 --{change}")).any_stdout().check();
    }
    let answer = |line: &str, code: i32| {
        let run = folder.run(&format!("{line} {JOURNAL} --json")).code(code);
        if code == 0 { run.json() } else { run.stderr_has(JOURNAL).json() }
    };
    let mut answers = vec![answer("check", 0), answer("repair", 0)];
    let text = folder.read(JOURNAL);
    let lines: Vec<_> = text.lines().collect();
    let damaged = [lines[0], lines[1], lines[3], lines[5], lines[4], lines[3], "{\"v\":1"];
    folder.write(JOURNAL, &damaged.join("\n"));
    answers.extend([answer("check", 3), answer("repair --dry-run", 0), answer("repair", 0)]);
    answers
}
