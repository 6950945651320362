//! The only place that prints: the answer on standard output, everything else on standard error. (How far a long
//! computation is, on a terminal, is written by `progress.rs`.)

use std::io::{self, ErrorKind, IsTerminal, Write};
use std::path::Path;
use std::process::ExitCode;

use clap::error::{ContextKind, ContextValue};
use quarterturn_journal::journals_in;

use crate::answer::Answer;
use crate::caret::{Paint, drawn};
use crate::failure::{Failure, Kind};
use crate::wording::visible;

/// The exit code of a fault of the program itself: that of every Rust program.
const FAULT: i32 = 101;

/// Prints what a command answered, and says how the program ends.
pub fn outcome(outcome: Result<Answer, Failure>) -> ExitCode {
    let printed = outcome.and_then(|answer| {
        answer.notices.iter().for_each(|notice| aside(&format!("note: {}", visible(notice))));
        print(&answer.text)?;
        answer.failure.map_or(Ok(()), Err)
    });
    match printed {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            aside(&drawn(&failure, paint()));
            failure.kind.into()
        }
    }
}

/// Prints the help that was asked for, or what was not understood and what was set beside what was typed.
pub fn unparsed(error: &clap::Error, set: impl Iterator<Item = String>) -> ExitCode {
    // Nobody is left to tell where even this cannot be printed.
    let _ = error.print();
    if error.use_stderr() {
        if let Some(hint) = journal_missing(error) {
            aside(&hint);
        }
        set.for_each(|set| aside(&format!("note: {}", visible(&set))));
    }
    if error.use_stderr() { Kind::Usage.into() } else { ExitCode::SUCCESS }
}

/// The journal of this folder, where a command was given none.
fn journal_missing(error: &clap::Error) -> Option<String> {
    let ContextValue::Strings(missing) = error.get(ContextKind::InvalidArg)? else { return None };
    let found = journals_in(Path::new(".")).ok()?;
    let [journal] = found.as_slice() else { return None };
    let name = visible(&journal.file_name()?.to_string_lossy());
    missing
        .iter()
        .any(|missing| missing == "<JOURNAL>")
        .then(|| format!("note: the journal of this folder is {name}"))
}

/// Lets a fault of the program itself be told in plain words, and end it; the system gives back its lock.
pub fn tell_panics_plainly() {
    std::panic::set_hook(Box::new(|panic| {
        aside(
            "error: this is a fault of the program, not yours; the journal is as it was last confirmed",
        );
        aside(&format!("please report it with what you typed and this line: {panic}"));
        std::process::exit(FAULT);
    }));
}

/// Prints a part of an answer that goes on.
pub fn say(text: &str) -> Result<(), Failure> {
    print(text)
}

/// Shows a screen of a dialogue, in place of the one before where the terminal can; the question stays behind it.
pub fn screen(text: &str) -> Result<(), Failure> {
    let anew = if is_dumb() { "\n" } else { "\x1b[2J\x1b[H" };
    print(&format!("{anew}{text}"))
}

/// Asks a person for a line; it stays behind the question.
pub fn ask(question: &str) {
    let mut error = io::stderr().lock();
    let _ = error.write_all(question.as_bytes()).and_then(|()| error.flush());
}

/// Prints the answer; a reader that has gone away has seen enough.
fn print(text: &str) -> Result<(), Failure> {
    let mut output = io::stdout().lock();
    match output.write_all(text.as_bytes()).and_then(|()| output.flush()) {
        Err(error) if error.kind() != ErrorKind::BrokenPipe => {
            Err(Failure::new(Kind::InputOutput, format!("could not print the answer: {error}")))
        }
        _ => Ok(()),
    }
}

/// A line on standard error; nobody is left to tell where it cannot be written.
fn aside(line: &str) {
    let _ = writeln!(io::stderr(), "{line}");
}

/// Colour only for a terminal, and not where `NO_COLOR` asks for none.
fn paint() -> Paint {
    let asked_for_none = std::env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty());
    if io::stderr().is_terminal() && !asked_for_none && !is_dumb() {
        Paint::Coloured
    } else {
        Paint::Plain
    }
}

/// Whether the terminal says that it obeys no escapes.
fn is_dumb() -> bool {
    std::env::var_os("TERM").is_some_and(|term| term == "dumb")
}
