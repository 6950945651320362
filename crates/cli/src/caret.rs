//! Failures drawn for the eye: the sentence, the line, a caret under the place, the ways on.

use annotate_snippets::{Annotation, AnnotationKind, Group, Level, Renderer, Snippet};

use crate::failure::{Failure, Marked, WrongPlace};
use crate::wording::visible;

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
    let shown = failure.marked.as_deref().map(shown);
    let group = Group::with_title(title).elements(shown.as_ref().map(snippet));
    let renderer = match paint {
        Paint::Coloured => Renderer::styled(),
        Paint::Plain => Renderer::plain(),
    };
    renderer.render(&[group.elements(hints)])
}

/// The text with what a terminal acts on as escapes, and its places where they then are.
fn shown(marked: &Marked) -> Marked {
    let plain = |text: &str| visible(&text.replace("\r\n", "\n"));
    let before = |at: usize| {
        let before = marked.text.get(..at).unwrap_or_default();
        // A line end is one thing, wherever it is cut.
        let cut = marked.text.get(at..).is_some_and(|rest| rest.starts_with('\n'));
        plain(if cut { before.strip_suffix('\r').unwrap_or(before) } else { before }).len()
    };
    let places = marked.places.iter().map(|WrongPlace { span, label }| WrongPlace {
        span: before(span.start)..before(span.end),
        label: label.clone(),
    });
    let (origin, text) = (marked.origin.clone(), plain(&marked.text));
    Marked { origin, text, places: places.collect() }
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
    fn what_is_hidden_in_the_text_is_seen() {
        let text = "R 0\r\n7 \u{200b}r3\u{202e} z8\r\n";
        let at = text.find("z8").unwrap();
        let marked = Marked::typed(text).wrong(at..at + 2, "what is this?");
        let drawn = drawn(&Failure::new(Kind::Data, "no").marking(marked), Paint::Plain);
        let lines: Vec<&str> = drawn.lines().collect();
        assert_eq!(lines[2], "2 | 7 \\u{200b}r3\\u{202e} z8");
        assert_eq!(lines[3].find('^'), lines[2].find("z8"));
    }

    #[test]
    fn escapes_in_what_was_typed_are_shown() {
        let failure = Failure::new(Kind::Data, "no file \u{1b}[31m");
        assert_eq!(drawn(&failure, Paint::Plain), "error: no file \\u{1b}[31m");
    }
}
