//! Text that any reader of XML accepts, whatever it was.

use quarterturn_entry::is_hidden;

/// `text` for use between tags or in an attribute between double quotes: markup is escaped; control characters, those that turn
/// the direction of writing and those that XML forbids are dropped; a line break becomes a space.
pub fn escape(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\n' | '\t' => safe.push(' '),
            _ if is_unprintable(c) => {}
            _ => safe.push(c),
        }
    }
    safe
}

fn is_unprintable(c: char) -> bool {
    is_hidden(c) || matches!(c, '\u{fffe}' | '\u{ffff}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn markup_and_control_characters_do_not_survive() {
        assert_eq!(escape("a<b>&\"c\"'d'"), "a&lt;b&gt;&amp;&quot;c&quot;'d'");
        assert_eq!(escape("one\ntwo\u{0}\u{1b}[31m\u{202e}\u{ffff}"), "one two[31m");
    }
}
