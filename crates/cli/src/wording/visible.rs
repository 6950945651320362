//! Text from outside, made safe to show.

/// The text with control characters and characters that reorder or join text shown as escapes; line ends and
/// tabs stay.
pub fn visible(text: &str) -> String {
    let mut shown = String::with_capacity(text.len());
    for c in text.chars() {
        if is_hidden(c) {
            shown.extend(c.escape_unicode());
        } else {
            shown.push(c);
        }
    }
    shown
}

/// Whether a terminal would act on the character instead of showing it.
fn is_hidden(c: char) -> bool {
    let reorders = matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}');
    reorders || (c.is_control() && !matches!(c, '\n' | '\t'))
}

#[cfg(test)]
mod tests {
    use super::visible;

    #[test]
    fn escapes_are_seen_and_not_obeyed() {
        assert_eq!(visible("a\u{1b}[31mb\r\n"), "a\\u{1b}[31mb\\u{d}\n");
        assert_eq!(visible("\u{202e}abc"), "\\u{202e}abc");
        assert_eq!(visible("größer"), "größer");
    }
}
