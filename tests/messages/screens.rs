//! What no screen may show: a name of the program's own, something that is no number, more digits than are known.

use super::{Source, sources};
use crate::support::repository::read;

/// More digits than this nobody measured, and no estimate has.
const DIGITS: usize = 4;
const DECIMALS: usize = 3;

/// What Rust writes of its own values.
const RUST: [&str; 8] = ["NaN", "Some(", "None", "Ok(", "Err(", "::", "panicked", "{:"];

#[test]
fn no_screen_shows_what_is_the_programs_own() {
    let interfaces = read("docs/machine-interface.md") + &read("docs/import-export.md");
    let settings = read("docs/commands.md");
    let is_known = |word: &str| {
        interfaces.contains(word) || settings.contains(&format!("--{}", word.replace('_', "-")))
    };
    let fault = |line: &str| {
        let rust = RUST.iter().find(|own| line.contains(**own)).map(ToString::to_string);
        let mut words =
            line.split(|c: char| !(c.is_ascii_alphanumeric() || matches!(c, '_' | '.')));
        rust.or_else(|| {
            let is_own = |word: &&str| word.trim_matches('_').contains('_') && !is_known(word);
            words.find(|word| is_own(word) || is_too_exact(word)).map(str::to_owned)
        })
    };
    let faults: Vec<_> = shown()
        .iter()
        .filter_map(|(path, line)| Some(format!("{path}: {} in: {line}", fault(line)?)))
        .collect();
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

/// Whether a word is a number that says more than anybody can know.
fn is_too_exact(word: &str) -> bool {
    let Some((whole, decimals)) = word.trim_end_matches('.').split_once('.') else { return false };
    let is_number = [whole, decimals].iter().all(|part| part.bytes().all(|b| b.is_ascii_digit()));
    let digits = format!("{whole}{decimals}");
    is_number && (decimals.len() > DECIMALS || digits.trim_start_matches('0').len() > DIGITS)
}

/// Every line of every screen that is kept, with its file; without commands and without JSON.
fn shown() -> Vec<(String, String)> {
    let kept = ["README.md", "docs/", "tests/said/", "crates/"];
    let is_kept = |source: &Source| {
        kept.iter().any(|place| source.path.starts_with(place))
            && (source.ends_in("md") || source.name() == "golden.txt")
    };
    let lines = |source: &Source| -> Vec<(String, String)> {
        let blocks = source.text.split("```console").skip(1);
        let blocks: Vec<&str> = if source.ends_in("md") {
            blocks.filter_map(|block| block.split("```").next()).collect()
        } else {
            vec![&source.text]
        };
        let lines = blocks.into_iter().flat_map(str::lines);
        let lines = lines.filter(|line| !line.starts_with(['$', '>', '{']));
        lines.map(|line| (source.path.clone(), line.to_owned())).collect()
    };
    let lines: Vec<_> =
        sources("").iter().filter(|source| is_kept(source)).flat_map(lines).collect();
    assert!(lines.len() > 1000, "{} lines are kept", lines.len());
    lines
}

#[test]
fn digits_that_nobody_knows_are_seen() {
    for word in ["31.4159", "0.12345", "123.45", "1000.5"] {
        assert!(is_too_exact(word), "{word}");
    }
    for word in ["31.4", "0.012", "762.0", "18.29", "1000", "face.svg", "1.2.3"] {
        assert!(!is_too_exact(word), "{word}");
    }
}
