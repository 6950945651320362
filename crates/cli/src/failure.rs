//! What went wrong, as a person is told, and the exit code it ends in.

use std::ops::Range;
use std::process::ExitCode;

use crate::wording::visible;
use quarterturn_entry::{Advising, Located};

/// What kind of thing went wrong; each has its own exit code.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// The command was not understood.
    Usage,
    /// What was entered, or the journal, is not right.
    Data,
    /// Another program is writing to the journal.
    Busy,
    /// A file could not be read or written.
    InputOutput,
}

impl From<Kind> for ExitCode {
    fn from(kind: Kind) -> Self {
        Self::from(match kind {
            Kind::Usage => 2,
            Kind::Data => 3,
            Kind::Busy => 4,
            Kind::InputOutput => 5,
        })
    }
}

/// What is wrong, where, and ways on.
#[derive(Clone, Debug)]
pub struct Failure {
    /// What kind of thing went wrong.
    pub kind: Kind,
    /// What is wrong, in a sentence without its full stop.
    pub what: String,
    /// The text in which it stands, where there is one.
    pub marked: Option<Box<Marked>>,
    /// Ways on.
    pub hints: Vec<String>,
}

/// A text in which places are wrong.
#[derive(Clone, Debug)]
pub struct Marked {
    /// The file it comes from; nothing where it was typed.
    pub origin: Option<String>,
    /// The text.
    pub text: String,
    /// What is wrong in it; never empty.
    pub places: Vec<WrongPlace>,
}

/// A place in a text and what is wrong there.
#[derive(Clone, Debug)]
pub struct WrongPlace {
    /// Its bytes.
    pub span: Range<usize>,
    /// What is said of it.
    pub label: String,
}

impl Failure {
    /// A failure without a place.
    pub fn new(kind: Kind, what: impl AsRef<str>) -> Self {
        Self { kind, what: visible(what.as_ref()), marked: None, hints: Vec::new() }
    }

    /// What was found in the value `text` of an option.
    pub fn in_option<F: Advising>(option: &str, text: &str, located: &Located<F>) -> Self {
        Self::new(Kind::Usage, format!("the value of {option} cannot be used"))
            .marking(Marked::typed(text).wrong(located.span.clone(), located.fault.to_string()))
            .hinting(located.fault.way_on())
    }

    /// The same with the text in which it stands.
    pub fn marking(self, marked: Marked) -> Self {
        Self { marked: Some(Box::new(marked)), ..self }
    }

    /// The same with more ways on, each said once.
    pub fn hinting(mut self, hints: impl IntoIterator<Item = impl AsRef<str>>) -> Self {
        for hint in hints {
            let hint = visible(hint.as_ref());
            if !self.hints.contains(&hint) {
                self.hints.push(hint);
            }
        }
        self
    }
}

impl Marked {
    /// A text that was typed.
    pub fn typed(text: &str) -> Self {
        Self { origin: None, text: text.to_owned(), places: Vec::new() }
    }

    /// A text that stands in a file.
    pub fn file(origin: &str, text: &str) -> Self {
        Self { origin: Some(visible(origin)), ..Self::typed(text) }
    }

    /// The same with one more place that is wrong; of several lines only the first is marked.
    pub fn wrong(mut self, span: Range<usize>, label: impl AsRef<str>) -> Self {
        let marked = self.text.get(span.clone()).unwrap_or_default();
        let first_line = marked.lines().next().unwrap_or_default();
        let span = span.start..span.start + first_line.len();
        self.places.push(WrongPlace { span, label: visible(label.as_ref()) });
        self
    }
}
