//! A journal that is missing, damaged or no journal.

use super::plain;
use crate::support::{Folder, JOURNAL};

const COPY: &str =
    "take the line from a copy, or see what `repair --dry-run` can keep; nothing was changed";

/// Every command that needs the journal refuses it with these words, and leaves it as it is.
#[track_caller]
fn refused(folder: &Folder, what: &str, hints: &[&str]) {
    let before = folder.read(JOURNAL);
    for command in ["next", "show", "plot", "undo"] {
        let run = folder.run(&format!("{command} {JOURNAL}"));
        run.code(3).stderr(&plain(what, hints)).check();
    }
    let end = folder.run(&format!("end {JOURNAL}")).arg("R 0").code(3);
    end.stderr(&plain(what, hints)).check();
    assert_eq!(folder.read(JOURNAL), before, "the journal was changed");
}

/// An evening of three shafts whose journal was then rewritten line by line.
fn rewritten(rewrite: impl Fn(usize, &str) -> String) -> Folder {
    let folder = Folder::with_an_end();
    folder.run(&format!("shaft {JOURNAL} 3 --set-aside")).any_stdout().check();
    let lines = folder.read(JOURNAL);
    let lines = lines.lines().enumerate().map(|(k, line)| rewrite(k + 1, line));
    let text = lines.filter(|line| !line.is_empty()).map(|line| line + "\n");
    folder.write(JOURNAL, &text.collect::<Vec<_>>().concat());
    folder
}

#[test]
fn a_missing_journal() {
    let folder = Folder::new();
    let what = format!("there is no journal {JOURNAL}");
    let message = plain(&what, &["begin one with `new`, or check the name"]);
    for command in ["next", "show", "plot", "undo", "shaft 1 --lost", "bow --note rest", "end 0"] {
        let (name, rest) = command.split_once(' ').unwrap_or((command, ""));
        folder.run(&format!("{name} {JOURNAL} {rest}")).code(5).stderr(&message).check();
    }
    assert_eq!(folder.names(), [""; 0]);
}

#[test]
fn a_line_that_was_changed() {
    let folder = rewritten(|_, line| line.replace("\"x_mm\":31.0", "\"x_mm\":13.0"));
    let what = "its checksum does not fit: it was changed after it was written";
    refused(&folder, &format!("{JOURNAL}, line 2: {what}"), &[COPY]);
}

#[test]
fn a_line_that_is_missing() {
    let folder = rewritten(|k, line| if k == 2 { String::new() } else { line.to_owned() });
    let what = "record 3 stands where record 2 belongs: a line is missing";
    refused(&folder, &format!("{JOURNAL}, line 2: {what}"), &[COPY]);
}

#[test]
fn a_line_that_stands_twice() {
    let folder = rewritten(|k, line| if k == 2 { format!("{line}\n{line}") } else { line.into() });
    let what = "record 2 stands where record 3 belongs: a line stands twice or was moved";
    refused(&folder, &format!("{JOURNAL}, line 3: {what}"), &[COPY]);
}

#[test]
fn a_file_that_is_no_journal() {
    let folder = Folder::new();
    folder.write(JOURNAL, "bread, milk, arrows\n");
    let what = "this is not a record with its checksum at the end";
    refused(&folder, &format!("{JOURNAL}, line 1: {what}"), &[COPY]);
    folder.write(JOURNAL, "");
    let begin = "if it is a journal that was never begun, delete it and begin again";
    refused(&folder, &format!("{JOURNAL} holds no whole record"), &[begin]);
}

#[test]
fn a_torn_end_is_left_out_and_kept_aside() {
    let folder = Folder::with_an_end();
    let whole = folder.read(JOURNAL);
    folder.write(JOURNAL, &format!("{whole}{{\"v\":1,\"seq\":3,\"id\":\"0"));
    let left_out = "the last 22 bytes are not a whole record and are left out";
    folder
        .run(&format!("next {JOURNAL} --json"))
        .any_stdout()
        .stderr(&format!("note: {JOURNAL}: {left_out}\n"))
        .check();
    let moved = format!("note: the journal had a torn end: it was moved to {JOURNAL}.torn-1\n");
    let shaft = folder.run(&format!("shaft {JOURNAL} 3 --lost"));
    shaft.any_stdout().stderr(&moved).check();
    assert!(folder.read(JOURNAL).starts_with(&whole));
    assert_eq!(folder.read(&format!("{JOURNAL}.torn-1")), "{\"v\":1,\"seq\":3,\"id\":\"0");
}
