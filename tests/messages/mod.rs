//! Every message that the program can print stands somewhere as a person sees it.
//!
//! Of each text in the source the longest piece between two values must stand in what the tests expect or in what the
//! documents show, which are read by people.

mod literals;
mod screens;

use literals::{Literal, literals};

use crate::support::repository::{Source, sources};

/// What no test can make the program say, each with its reason.
const NEVER_SEEN: [(&str, &[&str]); 7] = [
    (
        "only at a terminal",
        &[
            "Nothing was recorded.",
            "Enter: it is done and entered for you (q and Enter: stop here)",
        ],
    ),
    (
        "only in a program built otherwise",
        &[
            "this program was built without reading pictures",
            "leave the picture out and give the pixels of the marks with --marks",
            "no PNG was made:",
            "no commit known",
        ],
    ),
    (
        "only of a system that is broken",
        &["the clock says", "set the date of this computer", "could not read this folder:"],
    ),
    (
        "only after a fault of the program",
        &[
            "error: this is a fault of the program, not yours; the journal is as it was last confirmed",
            "please report it with what you typed and this line:",
            "could not make a page:",
            "the report could not be made:",
            "This chart could not be drawn",
            "the invented line",
            "no members",
        ],
    ),
    (
        "only of an invented dozen among hundreds",
        &[
            "[one more end, shot and entered in the same way]",
            "rest moved",
            "--note \"rest moved\" --part rest --move-mm",
        ],
    ),
    (
        "what the reader of tables might yet find",
        &["this is not a table", "export it as a table in UTF-8, a shot a line"],
    ),
    ("no words", &["region open", "region common", "bar chosen", "DejaVu Sans Condensed"]),
];

/// What stands before a text that is for developers.
const FOR_DEVELOPERS: [&str; 6] =
    ["expect(", "reason = ", "panic!(", "unreachable!(", "doc = ", "assert"];

#[test]
fn every_message_is_seen_in_a_test_or_a_document() {
    let (code, tests): (Vec<_>, Vec<_>) = rust().into_iter().partition(|(is, _)| *is == Is::Code);
    let mut seen: String = tests.iter().flat_map(|(_, source)| texts(source)).collect();
    seen.extend(documents().iter().map(|text| plain(text)));
    let mut unseen = Vec::new();
    for (_, Source { path, text }) in &code {
        for literal in literals(text).iter().filter(|literal| is_said(literal)) {
            let piece = longest_piece(&literal.text);
            let allowed = NEVER_SEEN.iter().any(|(_, texts)| texts.contains(&piece.as_str()));
            if !seen.contains(&piece) && !allowed {
                unseen.push(format!("{path}:{}: {piece}", literal.line));
            }
        }
    }
    assert!(unseen.is_empty(), "{} messages:\n{}", unseen.len(), unseen.join("\n"));
}

/// Whether a piece of source is of the program or of its tests.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Is {
    Code,
    Test,
}

/// All Rust of the repository, that of the program apart from that of the tests.
fn rust() -> Vec<(Is, Source)> {
    let mut all = Vec::new();
    let sources = sources("crates").into_iter().chain(sources("tests"));
    for source in sources.filter(|source| source.ends_in("rs")) {
        if !source.path.contains("/src/") || source.path.contains("tests") {
            all.push((Is::Test, source));
            continue;
        }
        let text = &source.text;
        let (code, tests) = text.split_once("#[cfg(test)]\nmod tests {").unwrap_or((text, ""));
        let part = |text: &str| Source { path: source.path.clone(), text: text.to_owned() };
        all.extend([(Is::Code, part(code)), (Is::Test, part(tests))]);
    }
    all
}

fn texts(source: &Source) -> Vec<String> {
    literals(&source.text).iter().map(|literal| plain(&literal.text)).collect()
}

/// What the documents show: their blocks, and the pictures.
fn documents() -> Vec<String> {
    let mut all = sources("docs");
    all.extend(sources("tests").into_iter().filter(|source| source.ends_in("md")));
    all.extend(sources("").into_iter().filter(|source| source.path == "README.md"));
    all.extend(sources("crates").into_iter().filter(|source| source.name().starts_with("golden.")));
    let shown = |source: &Source| match source.path.rsplit('.').next() {
        Some("md") => source.text.split("```").skip(1).step_by(2).map(str::to_owned).collect(),
        Some("txt") => vec![source.text.clone()],
        Some("svg") => vec![without_tags(&source.text)],
        _ => vec![],
    };
    all.iter().flat_map(shown).collect()
}

/// The words of a picture.
fn without_tags(svg: &str) -> String {
    svg.split('<')
        .filter_map(|piece| piece.split_once('>'))
        .map(|(_, words)| words.to_owned() + " ")
        .collect()
}

/// A text as it is said, without how it is broken into lines.
fn plain(text: &str) -> String {
    let unbroken = text.replace("\\\n>", " ").replace("\\\n", " ").replace("&quot;", "\"");
    let words = unbroken.split_whitespace().map(|word| format!("{word} "));
    words.collect::<String>() + "\n"
}

/// Whether a text is for people: it has two words, and is not for those of the source alone.
fn is_said(literal: &Literal) -> bool {
    let words: Vec<_> = literal.text.split_whitespace().collect();
    let word = |text: &str| text.chars().filter(|letter| letter.is_alphabetic()).count() > 1;
    words.windows(2).any(|two| two.iter().all(|text| word(text)))
        && !literal.text.starts_with(['<', '%'])
        && !FOR_DEVELOPERS.iter().any(|before| literal.before.contains(before))
}

/// The longest piece of a text between two values.
fn longest_piece(text: &str) -> String {
    let literal = text.replace("{{", "\u{1}").replace("}}", "\u{2}");
    let pieces = literal
        .split(['{', '\n'])
        .map(|piece| piece.split_once('}').map_or(piece, |(_, rest)| rest).trim_end_matches('\\'));
    let pieces =
        pieces.map(|piece| plain(piece).trim_end().replace('\u{1}', "{").replace('\u{2}', "}"));
    pieces.max_by_key(String::len).unwrap_or_default()
}
