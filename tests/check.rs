//! `check`: whether a journal is whole, and what that proves.

use crate::support::{Folder, JOURNAL};

#[test]
fn a_whole_journal_is_proved_and_counted() {
    let folder = Folder::with_an_end();
    folder.run(&format!("undo {JOURNAL}")).any_stdout().check();
    let before = folder.read(JOURNAL);
    let said = folder.run(&format!("check {JOURNAL}")).any_stdout().check();
    assert!(said.starts_with("evening.journal is whole: 3 records, "), "{said}");
    for part in ["its checksum is right", "1 new, 1 end and 1 undo; 3 shots", "record 3 of 20"] {
        assert!(said.contains(part), "{part} in\n{said}");
    }
    assert_eq!(folder.read(JOURNAL), before);
    let answer = folder.run(&format!("check {JOURNAL} --json")).json();
    assert_eq!((&answer["records"], &answer["standing"]), (&3.into(), &0.into()));
}

#[test]
fn a_torn_end_is_told() {
    let folder = Folder::with_an_end();
    folder.write(JOURNAL, &(folder.read(JOURNAL) + "{\"v\":1"));
    let run = folder.run(&format!("check {JOURNAL}"));
    run.stdout_has("the last 6 bytes are not a whole record").check();
}

#[test]
fn a_journal_that_is_not_whole_ends_in_3_after_all_that_was_found() {
    let folder = Folder::with_an_end();
    folder.run(&format!("shaft {JOURNAL} 3 --lost")).any_stdout().check();
    let damaged = folder.read(JOURNAL).replace("\"x_mm\":31.0", "\"x_mm\":13.0");
    folder.write(JOURNAL, &damaged);
    let found = "line 2: its checksum does not fit: it was changed after it was written\n\
        record 2 has no line\n\n2 records can be read, record 2 cannot.\n";
    let run = folder.run(&format!("check {JOURNAL}")).code(3).stdout(found);
    run.stderr_has("evening.journal, line 2").stderr_has("repair --dry-run").check();
    assert_eq!(folder.read(JOURNAL), damaged);
    assert!(!folder.names().iter().any(|name| name.contains("repair")));
}

#[test]
fn what_is_no_journal_is_3_or_5() {
    let folder = Folder::new();
    folder.run("check nowhere.journal").code(5).stderr_has("nowhere.journal").check();
    folder.write("list", "bread, milk, arrows\n");
    folder.run("check list").code(3).stderr_has("cannot be mended").check();
}
