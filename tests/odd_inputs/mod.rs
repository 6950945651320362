//! More than 350 inputs that nobody should type, send or import, and somebody will: each is refused in plain words at its
//! place, or taken and made harmless in every output.

mod notes;
mod table;

use std::fs;

use crate::support::{Folder, JOURNAL, Run};
use table::{ALIKE, FILES, JSON_ENDS, LINES, NAMES, NOTES, OPTIONS, TABLES};

/// What a run said, as the table has it: "taken", or line and column, the message and the first way on.
fn said(run: Run) -> String {
    let (code, told) = run.said();
    assert!(!told.contains("panicked") && code != 101, "{told}");
    assert!(!told.chars().any(is_hidden), "{told:?}");
    if code == 0 {
        return "taken".to_owned();
    }
    let lines: Vec<&str> = told.lines().collect();
    let help = told.lines().find_map(|line| Some(line.split_once("= help: ")?.1));
    let message = marked(&lines)
        .unwrap_or_else(|| lines[0].trim_start_matches("error: ").trim_end().to_owned());
    help.map_or(message.clone(), |help| format!("{message} | {help}"))
}

/// "1:20 \"z8\" is not a word of the line": where the caret stands, and what stands beside it.
fn marked(lines: &[&str]) -> Option<String> {
    let (at, caret) = lines.iter().enumerate().find_map(|(at, line)| {
        let below = line.trim_start().strip_prefix('|')?;
        below.trim_start().starts_with('^').then_some((at, below))
    })?;
    let column = caret.len() - caret.trim_start().len();
    let label = caret.trim_start().trim_start_matches('^').trim_start();
    let origin = lines.iter().find_map(|line| line.trim_start().strip_prefix("--> "));
    let place = if let Some(origin) = origin {
        origin.split_once(':')?.1.to_owned()
    } else {
        let number = lines[at - 1].split_once(" | ").map_or("?", |(number, _)| number);
        format!("{number}:{column}")
    };
    Some(format!("{place} {label}"))
}

/// A character that a terminal acts on.
fn is_hidden(c: char) -> bool {
    let reorders = matches!(c, '\u{61c}' | '\u{200b}'..='\u{200f}' | '\u{2028}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{feff}' | '\u{e0000}'..='\u{e007f}');
    reorders || (c.is_control() && !matches!(c, '\n' | '\t'))
}

#[track_caller]
fn same(expected: &str, input: &str, said: &str) {
    assert_eq!(said, expected, "for {input:?}");
}

/// Whatever was refused, the journal is as it was; what was taken is taken back.
fn unharmed(folder: &Folder, before: &str, said: &str) {
    if said == "taken" {
        folder.run(&format!("undo {JOURNAL}")).any_stdout().check();
    } else {
        assert!(folder.read(JOURNAL) == before, "refused and written: {said}");
    }
}

#[test]
fn there_are_enough_of_them() {
    let refused = LINES.len() + JSON_ENDS.len() + TABLES.len() + NAMES.len();
    let all = refused + OPTIONS.len() + FILES.len() + ALIKE.len() + NOTES.len();
    assert!(all >= 350, "{all}");
}

#[test]
fn typed_ends() {
    let folder = Folder::begun("1-12");
    for (line, expected) in LINES {
        let before = folder.read(JOURNAL);
        let came = said(folder.run(&format!("end {JOURNAL}")).arg(line));
        same(expected, line, &came);
        unharmed(&folder, &before, &came);
    }
}

#[test]
fn ends_as_json() {
    let folder = Folder::begun("1-12");
    for (json, expected) in JSON_ENDS {
        let before = folder.read(JOURNAL);
        let came = said(folder.run(&format!("end {JOURNAL} --json -")).stdin(json));
        same(expected, json, &came);
        unharmed(&folder, &before, &came);
    }
}

#[test]
fn tables() {
    let folder = Folder::begun("1-12");
    let before = folder.read(JOURNAL);
    for (table, expected) in TABLES {
        let run = folder.run(&format!("import {JOURNAL} - --dry-run")).stdin(table);
        same(expected, table, &said(run));
        assert_eq!(folder.read(JOURNAL), before, "a dry run wrote");
    }
}

#[test]
fn files() {
    let folder = Folder::begun("1-12");
    for (bytes, expected) in FILES {
        fs::write(folder.file("f"), bytes).unwrap();
        let before = folder.read(JOURNAL);
        let came = said(folder.run(&format!("end {JOURNAL} --file f")));
        same(expected, &String::from_utf8_lossy(bytes), &came);
        unharmed(&folder, &before, &came);
    }
}

/// A line without an end is given up in time, whatever reads it.
#[test]
fn an_endless_line() {
    let folder = Folder::begun("1-12");
    folder.write("f", &"r".repeat((1 << 20) + 1));
    let too_long = "f is longer than an end can be: more than 1048576 bytes";
    for option in ["--file", "--json"] {
        same(too_long, option, &said(folder.run(&format!("end {JOURNAL} {option} f"))));
    }
    let came = said(folder.run(&format!("import {JOURNAL} f")));
    assert!(came.starts_with("1:1 this line is longer than any table's"), "{came}");
}

#[test]
fn names_and_options_of_a_new_journal() {
    for (names, expected) in NAMES {
        let new = Folder::new();
        let run = new.run(&format!("new {JOURNAL} --reference R --distance 18.3m"));
        same(
            expected,
            names,
            &said(run.args("--tolerance 25mm").arg(&format!("--shafts={names}"))),
        );
        assert_eq!(new.names().len(), usize::from(*expected == "taken"), "{names}");
    }
    for (option, value, expected) in OPTIONS {
        let new = Folder::new();
        let mut settings = vec![("distance", "18.3m"), ("tolerance", "25mm")];
        settings.retain(|(name, _)| name != option);
        settings.push((option, value));
        let run = new.run(&format!("new {JOURNAL} --shafts 1-3 --reference R"));
        let run =
            settings.iter().fold(run, |run, (name, value)| run.arg(&format!("--{name}={value}")));
        same(expected, value, &said(run));
    }
}

#[test]
fn names_that_look_alike_are_told_and_kept_apart() {
    for (names, twins) in ALIKE {
        let new = Folder::new();
        let run =
            new.run(&format!("new {JOURNAL} --reference R --distance 18.3m --tolerance 25mm"));
        let (code, told) = run.arg(&format!("--shafts={names}")).said();
        assert_eq!(code, 0, "{names}: {told}");
        let expected = format!("note: {twins} look alike on a shaft and are two names here\n");
        assert_eq!(told, expected, "{names}");
    }
}
