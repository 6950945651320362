//! Text that a spreadsheet would take for a formula.

/// What a formula begins with; the apostrophe is here so that taking it off again is exact.
const BEGINNINGS: [char; 7] = ['=', '+', '-', '@', '\t', '\r', '\''];

/// The text with an apostrophe before what would be taken for a formula.
pub(super) fn guarded(text: &str) -> String {
    if text.starts_with(BEGINNINGS) { format!("'{text}") } else { text.to_owned() }
}

/// The text without that apostrophe.
pub(super) fn unguarded(text: &str) -> &str {
    match text.strip_prefix('\'') {
        Some(rest) if rest.starts_with(BEGINNINGS) => rest,
        _ => text,
    }
}

#[cfg(test)]
mod tests {
    use super::{guarded, unguarded};

    #[test]
    fn what_is_guarded_comes_back() {
        for text in ["=1+1", "+1", "-1", "@a", "\tb", "\rc", "'", "'=1", "''", "plain", "a=b", ""] {
            assert_eq!(unguarded(&guarded(text)), text);
            assert!(!guarded(text).starts_with(['=', '+', '-', '@', '\t', '\r']));
        }
        assert_eq!(unguarded("'twas dusk"), "'twas dusk");
    }
}
