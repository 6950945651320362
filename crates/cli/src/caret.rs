//! Failures drawn for the eye: the sentence, the line, a caret under the place, the ways on.

use annotate_snippets::{Annotation, AnnotationKind, Group, Level, Renderer, Snippet};

use crate::failure::{Failure, Marked, WrongPlace};

/// Whether escapes for colour may be written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paint {
    /// They may.
    Coloured,
    /// They may not.
    Plain,
}

/// The failure as text, without a line end behind it.
pub fn drawn(failure: &Failure, paint: Paint) -> String {
    let title = Level::ERROR.primary_title(failure.what.as_str());
    let hints = failure.hints.iter().map(|hint| Level::HELP.message(hint.as_str()));
    let group = Group::with_title(title).elements(failure.marked.as_deref().map(snippet));
    let renderer = match paint {
        Paint::Coloured => Renderer::styled(),
        Paint::Plain => Renderer::plain(),
    };
    renderer.render(&[group.elements(hints)])
}

fn snippet(marked: &Marked) -> Snippet<'_, Annotation<'_>> {
    let annotation = |place: &WrongPlace| {
        AnnotationKind::Primary.span(place.span.clone()).label(place.label.clone())
    };
    Snippet::source(marked.text.as_str())
        .path(marked.origin.as_deref())
        .annotations(marked.places.iter().map(annotation))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::failure::Kind;

    #[test]
    fn a_caret_stands_under_the_place() {
        let marked = Marked::typed("7 r31 z8").wrong(6..8, "what is this?");
        let failure = Failure::new(Kind::Data, "the end was not recorded")
            .marking(marked)
            .hinting(["say it otherwise"]);
        let expected = "\
error: the end was not recorded
  |
1 | 7 r31 z8
  |       ^^ what is this?
  |
  = help: say it otherwise";
        assert_eq!(drawn(&failure, Paint::Plain), expected);
    }

    #[test]
    fn escapes_in_what_was_typed_are_shown() {
        let failure = Failure::new(Kind::Data, "no file \u{1b}[31m");
        assert_eq!(drawn(&failure, Paint::Plain), "error: no file \\u{1b}[31m");
    }
}
