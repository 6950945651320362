//! Each exit code once; the same codes are in the help and in the documents.

use std::fs::File;
use std::io::Write;
use std::process::{Command, Stdio};

use crate::support::repository::read;
use crate::support::{Folder, JOURNAL, PROGRAM};

#[test]
fn done_is_0_also_where_nothing_can_be_said_yet() {
    Folder::begun("1-3").run(&format!("show {JOURNAL}")).any_stdout().check();
    Folder::new().run("--help").any_stdout().check();
    Folder::new().run("").any_stdout().check();
}

#[test]
fn not_understood_is_2() {
    Folder::new().run("--nonsense").code(2).stderr_has("--nonsense").check();
    Folder::new().run("shw").code(2).stderr_has("'show'").check();
}

#[test]
fn what_is_not_right_is_3() {
    Folder::begun("1-3")
        .run(&format!("end {JOURNAL} nonsense"))
        .code(3)
        .stderr_has("nonsense")
        .check();
}

#[test]
fn another_writer_is_4_and_readers_are_not_kept_waiting() {
    let folder = Folder::with_an_end();
    let lock = File::options().write(true).open(folder.file(&format!("{JOURNAL}.lock"))).unwrap();
    lock.lock().unwrap();
    (&lock).write_all(b"4711\n").unwrap();
    let before = folder.read(JOURNAL);
    folder.run(&format!("undo {JOURNAL}")).code(4).stderr_has("4711").check();
    folder.run(&format!("next {JOURNAL}")).any_stdout().check();
    assert_eq!(folder.read(JOURNAL), before);
}

#[test]
fn a_file_that_cannot_be_read_or_written_is_5() {
    let folder = Folder::begun("1-3");
    folder.run("next nowhere.journal").code(5).stderr_has("nowhere.journal").check();
    let plot = folder.run(&format!("plot {JOURNAL} -o nowhere/target.svg"));
    plot.code(5).stderr_has("nowhere/target.svg").check();
}

/// As in `quarterturn show ... | head -1`.
#[test]
fn a_reader_that_goes_away_has_seen_enough() {
    let folder = Folder::begun("1-12");
    let mut child = Command::new(PROGRAM)
        .args(["show", JOURNAL, "--json"])
        .current_dir(folder.path())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    let output = child.wait_with_output().unwrap();
    assert_eq!((output.status.code(), output.stderr), (Some(0), Vec::new()));
}

#[test]
fn the_help_and_the_documents_name_the_same_codes() {
    let help = Folder::new().run("--help").any_stdout().check();
    let documents = read("docs/machine-interface.md");
    for code in ["0", "2", "3", "4", "5"] {
        assert!(help.contains(&format!("\n  {code}    ")), "{code} in the help:\n{help}");
        assert!(documents.contains(&format!("\n| {code} | ")), "{code} in the documents");
    }
}
