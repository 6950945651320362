//! `undo`: takes back the last entry, of whatever kind.

use serde_json::json;

use crate::support::{Folder, JOURNAL};

#[test]
fn every_kind_of_entry_can_be_taken_back() {
    let folder = Folder::with_an_end();
    let before = folder.next();
    let end = json!({"shots": [{"shaft": "R", "x_mm": 0, "y_mm": 0}, {"shaft": "3", "x_mm": 60, "y_mm": 9}]});
    let entries: [&dyn Fn(); 4] = [
        &|| folder.enter(&end),
        &|| drop(folder.run(&format!("bow {JOURNAL} --note rest")).any_stdout().check()),
        &|| drop(folder.run(&format!("bow {JOURNAL} --leave tonight")).any_stdout().check()),
        &|| drop(folder.run(&format!("shaft {JOURNAL} 1 --lost")).any_stdout().check()),
    ];
    for enter in entries {
        enter();
        folder.run(&format!("undo {JOURNAL}")).any_stdout().check();
        assert_eq!(folder.next(), before);
    }
}

#[test]
fn taking_back_adds_to_the_journal_and_rewrites_nothing() {
    let folder = Folder::with_an_end();
    let before = folder.read(JOURNAL);
    folder.run(&format!("undo {JOURNAL}")).any_stdout().check();
    let after = folder.read(JOURNAL);
    assert!(after.starts_with(&before) && after.len() > before.len());
    assert_eq!(folder.next()["shafts"][0]["shots_total"], 0);
}

#[test]
fn undone_to_the_beginning_there_is_nothing_left_to_take_back() {
    let folder = Folder::with_an_end();
    folder.run(&format!("undo {JOURNAL}")).any_stdout().check();
    let before = folder.read(JOURNAL);
    folder.run(&format!("undo {JOURNAL}")).code(3).stderr_has("nothing").check();
    assert_eq!(folder.read(JOURNAL), before);
}
