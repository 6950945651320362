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

/// JSON in which such characters stand as escapes of JSON: it says the same.
pub fn visible_json(json: &str) -> String {
    let mut shown = String::with_capacity(json.len());
    for c in json.chars() {
        if is_hidden(c) {
            let mut units = [0; 2];
            shown.extend(c.encode_utf16(&mut units).iter().map(|unit| format!("\\u{unit:04x}")));
        } else {
            shown.push(c);
        }
    }
    shown
}

/// Whether a terminal would act on the character, or show nothing, instead of showing it.
pub fn is_hidden(c: char) -> bool {
    let reorders = matches!(c,
        '\u{061c}'
        | '\u{180e}'
        | '\u{200b}'..='\u{200f}'
        | '\u{2028}'..='\u{202e}'
        | '\u{2060}'..='\u{206f}'
        | '\u{feff}'
        | '\u{fff9}'..='\u{fffb}'
        | '\u{e0000}'..='\u{e007f}');
    reorders || (c.is_control() && !matches!(c, '\n' | '\t'))
}

#[cfg(test)]
mod tests {
    use super::{visible, visible_json};

    #[test]
    fn escapes_are_seen_and_not_obeyed() {
        assert_eq!(visible("a\u{1b}[31mb\r\n"), "a\\u{1b}[31mb\\u{d}\n");
        assert_eq!(visible("\u{202e}abc"), "\\u{202e}abc");
        assert_eq!(visible("größer"), "größer");
    }

    #[test]
    fn json_says_the_same_in_escapes() {
        let text = "a\u{9b}31m\u{202e}\u{e0041}ß";
        let json = serde_json::to_string(text).unwrap();
        assert_eq!(visible_json(&json), "\"a\\u009b31m\\u202e\\udb40\\udc41ß\"");
        assert_eq!(serde_json::from_str::<String>(&visible_json(&json)).unwrap(), text);
    }
}
