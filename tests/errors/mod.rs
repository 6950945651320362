//! What a person is told when something is wrong: the exact words, the place, the way on and the exit code.
//! Whatever is refused leaves the journal as it was.

mod bench;
mod commands;
mod damaged;
mod heads;
mod json_end;
mod options;
mod paper;
mod photo;
mod photo_tails;
mod quiver;
mod rehearse;
mod typed_end;

use crate::support::{Folder, JOURNAL};

/// A text in which ⟦...⟧ stands round the part that is wrong.
struct Marked {
    text: String,
    column: usize,
    width: usize,
}

impl Marked {
    fn of(marked: &str) -> Self {
        let (before, rest) = marked.split_once('⟦').expect("a marked place");
        let (wrong, after) = rest.split_once('⟧').expect("the end of the place");
        Self {
            text: format!("{before}{wrong}{after}"),
            column: before.chars().count() + 1,
            width: wrong.chars().count().max(1),
        }
    }

    /// The message as it is drawn; `hints` are the ways on.
    fn message(&self, what: &str, origin: Option<&str>, label: &str, hints: &[&str]) -> String {
        let Self { text, column, width } = self;
        let mut lines = vec![format!("error: {what}")];
        lines.extend(origin.map(|origin| format!(" --> {origin}:1:{column}")));
        lines.push("  |".into());
        lines.push(format!("1 | {text}").trim_end().into());
        lines.push(format!("  | {}{} {label}", " ".repeat(column - 1), "^".repeat(*width)));
        if !hints.is_empty() {
            lines.push("  |".into());
        }
        lines.extend(hints.iter().map(|hint| format!("  = help: {hint}")));
        lines.join("\n") + "\n"
    }
}

/// A message without a place.
fn plain(what: &str, hints: &[&str]) -> String {
    let mut message = format!("error: {what}\n");
    if !hints.is_empty() {
        message += " |\n";
    }
    message + &hints.iter().map(|hint| format!(" = help: {hint}\n")).collect::<Vec<_>>().concat()
}

/// Runs `check` on an evening of twelve shafts, which must leave its journal as it was.
fn unchanged(check: impl FnOnce(&Folder)) {
    let folder = Folder::begun("1-12");
    let before = folder.read(JOURNAL);
    check(&folder);
    assert_eq!(folder.read(JOURNAL), before, "the journal was changed");
}
