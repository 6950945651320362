//! `glue`: what was glued, and from when it may be shot.

use serde_json::{Value, json};

use crate::support::{Folder, JOURNAL};

const AT: &str = "--at 2026-02-26T19:00:00.5+01:00";

/// Of what is recorded, and of all that was glued.
pub fn answers() -> Vec<Value> {
    let folder = Folder::begun("1-3");
    let ask = |line: &str| folder.run(&format!("{line} --json")).json();
    let mut answers = vec![ask(&format!("glue {JOURNAL}"))];
    answers.push(ask(&format!("glue {JOURNAL} 1-3 --cure 24h {AT}")));
    answers.push(ask(&format!("glue {JOURNAL} R --part vanes --cure 2d")));
    answers.extend(["glue", "undo", "redo", "log"].map(|line| ask(&format!("{line} {JOURNAL}"))));
    answers
}

#[test]
fn a_gluing_says_from_when_it_may_be_shot() {
    let folder = Folder::begun("1-3");
    let glue = format!("glue {JOURNAL} 1-2 --cure 30min {AT}");
    let said = folder.run(&glue).any_stdout().check();
    let first = "Recorded: inserts glued, of 1 and 2. Do not shoot before 2026-02-26 19:30.\n";
    assert!(said.starts_with(first), "{said}");
    for part in [
        "Leave the nocks out",
        "gloves and fresh air",
        "Then: quarterturn checklist evening.journal",
    ] {
        assert!(said.contains(part), "{part} in\n{said}");
    }
    let all = folder.run(&format!("glue {JOURNAL}")).any_stdout().check();
    let table =
        "not before        it has  part     shafts\n2026-02-26 19:30  cured   inserts  1 2\n";
    assert!(all.starts_with(table), "{all}");
    let log = folder.run(&format!("log {JOURNAL}"));
    log.stdout_has("glued, insert: 1 2, cures 0.5 h").check();
    let undo = folder.run(&format!("undo {JOURNAL}"));
    undo.stdout_has("Taken back: what was glued on 1 and 2").check();
    let nothing = folder.run(&format!("glue {JOURNAL}"));
    nothing.stdout_has("Nothing was glued yet.").check();
}

#[test]
fn what_still_cures_is_said_before_it_is_shot() {
    let folder = Folder::begun("1-3");
    folder.run(&format!("glue {JOURNAL} 2,R --part other --cure 28d")).any_stdout().check();
    let all = folder.run(&format!("glue {JOURNAL}"));
    all.stdout_has("not cured  other parts  2 R").check();
    let next = folder.run(&format!("next {JOURNAL}")).any_stdout();
    let next = next.stderr_has("note: the glue of R cures: do not shoot it before 20");
    next.stderr_has("note: the glue of 2 cures").check();
    // Glued again with a glue that is quick, it may be shot.
    folder.run(&format!("glue {JOURNAL} 2,R --part other --cure 1min {AT}")).any_stdout().check();
    folder.run(&format!("next {JOURNAL}")).any_stdout().check();
}

#[test]
fn gluings_go_out_and_in() {
    let folder = Folder::begun("1-3");
    folder.run(&format!("glue {JOURNAL} 1-3 --cure 24h {AT}")).any_stdout().check();
    for (format, name) in [("--csv", "all.csv"), ("--json", "all.json")] {
        folder.run(&format!("export {JOURNAL} {format} -o {name}")).any_stdout().check();
        folder.run(&format!("import again-{name}.journal {name}")).any_stdout().check();
        let asked = |journal: &str| folder.run(&format!("glue {journal} --json")).json();
        let again = asked(&format!("again-{name}.journal"));
        assert_eq!(again, asked(JOURNAL));
        assert_eq!(again["glued"][0]["not_before"], json!("2026-02-27T19:00:00+01:00"));
    }
}
