//! `log`: what was entered, changed and taken back.

use serde_json::Value;

use crate::support::{Folder, JOURNAL};

#[test]
fn everything_is_told_with_what_became_of_it() {
    let folder = Folder::with_an_end();
    folder.run(&format!("fix {JOURNAL} 1")).arg("1 r13").any_stdout().check();
    folder.run(&format!("bow {JOURNAL} --note rest --part rest")).any_stdout().check();
    folder.run(&format!("undo {JOURNAL}")).any_stdout().check();
    folder.run(&format!("note {JOURNAL} dusk")).any_stdout().check();
    folder.run(&format!("shaft {JOURNAL} 4 --add --index 90")).any_stdout().check();
    let log = folder.run(&format!("log {JOURNAL}")).any_stdout().check();
    for said in [
        "7 records, 1 end standing.",
        "begun with 3 shafts",
        "corrected by record 3",
        "correction of end 1",
        "bow (rest): rest; taken back by record 5",
        "undo of record 4",
        "note: dusk",
        "4 joined, bare",
    ] {
        assert!(log.contains(said), "{said}:\n{log}");
    }
    assert!(log.lines().all(|line| line.chars().count() <= 80), "{log}");
    let log = folder.run(&format!("log {JOURNAL} --json")).json();
    let fates: Vec<_> = log["records"].as_array().unwrap().iter().map(|one| &one["fate"]).collect();
    assert_eq!(
        fates,
        ["stands", "corrected", "stands", "taken back", "stands", "stands", "stands"]
            .map(Value::from)
            .iter()
            .collect::<Vec<_>>()
    );
}
