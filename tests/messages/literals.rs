//! The string literals of Rust source, as the program holds them.

/// A literal, what stands before it on its line, and that line's number.
pub struct Literal<'a> {
    pub text: String,
    pub before: &'a str,
    pub line: usize,
}

/// Every string literal of `source` that is no byte string; comments hold none.
pub fn literals(source: &str) -> Vec<Literal<'_>> {
    let mut found = Vec::new();
    let mut at = 0;
    while let Some(rest) = source.get(at..).filter(|rest| !rest.is_empty()) {
        let raw = rest.strip_prefix('r').map(|rest| rest.trim_start_matches('#'));
        let hashes = raw.map_or(0, |raw| rest.len() - 1 - raw.len());
        let inside = raw.or(Some(rest)).and_then(|rest| rest.strip_prefix('"'));
        let names = |before: &str| before.ends_with(|letter: char| letter.is_alphanumeric());
        at += match inside {
            Some(inside) if !(raw.is_some() && names(&source[..at])) => {
                let length = match raw {
                    Some(_) => inside.find(&format!("\"{}", "#".repeat(hashes))),
                    None => closing(inside),
                }
                .expect("a literal ends");
                let text = &inside[..length];
                let before = &source[..at];
                found.push(Literal {
                    text: if raw.is_some() { text.to_owned() } else { unescaped(text) },
                    before: before.rsplit('\n').next().unwrap_or_default(),
                    line: before.lines().count(),
                });
                rest.len() - inside.len() + length + 1 + hashes
            }
            _ => other(rest),
        };
    }
    found
}

/// The bytes of what opens `rest` and is no literal: a comment, a character, or one letter of anything else.
fn other(rest: &str) -> usize {
    let line = || rest.find('\n').unwrap_or(rest.len());
    let quoted = |rest: &str| closing_character(rest).map(|length| length + 2);
    match rest.strip_prefix('\'') {
        _ if rest.starts_with("//") => line(),
        Some(inside) => quoted(inside).unwrap_or(1),
        None => rest.chars().next().map_or(1, char::len_utf8),
    }
}

/// Where the quote stands that closes a literal.
fn closing(inside: &str) -> Option<usize> {
    let mut escaped = false;
    inside.bytes().position(|byte| {
        let closes = byte == b'"' && !escaped;
        escaped = byte == b'\\' && !escaped;
        closes
    })
}

/// The bytes of a character in quotes; nothing where the quote opens a lifetime.
fn closing_character(inside: &str) -> Option<usize> {
    let first = inside.chars().next()?;
    let least = if first == '\\' { 2 } else { first.len_utf8() };
    let length = least + inside.get(least..)?.find('\'')?;
    (length == least || first == '\\').then_some(length)
}

/// What a literal with escapes stands for.
fn unescaped(text: &str) -> String {
    let mut parts = text.split('\\');
    let mut whole = parts.next().unwrap_or_default().to_owned();
    while let Some(part) = parts.next() {
        match part.chars().next() {
            // Two in a row: the next part is no escape.
            None => whole.extend(["\\", parts.next().unwrap_or_default()]),
            Some('\n') => whole += part.trim_start(),
            Some('n') => whole.extend(["\n", &part[1..]]),
            Some('u') => {
                let (code, rest) =
                    part[1..].trim_start_matches('{').split_once('}').expect("a code");
                whole.extend(u32::from_str_radix(code, 16).ok().and_then(char::from_u32));
                whole += rest;
            }
            Some(_) => whole += part,
        }
    }
    whole
}

#[test]
fn literals_are_read_as_the_compiler_does() {
    let source = r#"// "no"
        fn f<'a>(x: &'a str) { ('"', '\'', "a \"b\"\\", "c \
            d\u{2019}\n", r"e", for_"g") }"#;
    let texts: Vec<_> = literals(source).into_iter().map(|literal| literal.text).collect();
    assert_eq!(texts, ["a \"b\"\\", "c d\u{2019}\n", "e", "g"]);
}
