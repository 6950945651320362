//! How much room a text takes, guessed on the safe side: the sheet is set without knowing the reader's font.

/// What a font adds to the width of a text when it is bold, as a factor.
pub const BOLD: f64 = 1.1;

/// From the base line of a text up to its middle, as a share of its size: half a capital's height.
pub const MIDDLE: f64 = 0.36;

/// The width of `text` at `size_mm`, mm: at least what the widest common sans-serif font takes.
pub fn width_mm(text: &str, size_mm: f64) -> f64 {
    text.chars().map(width_em).sum::<f64>() * size_mm
}

/// `text`, or its beginning and its end about "…" where it is wider than `room_mm`: names differ at either end.
pub fn shortened(text: &str, size_mm: f64, room_mm: f64) -> String {
    let chars: Vec<char> = text.chars().collect();
    let cut = |kept: usize| -> String {
        let (head, tail) = (kept.div_ceil(2), kept / 2);
        let ends = chars.iter().take(head).chain(['…'].iter());
        ends.chain(chars.iter().skip(chars.len() - tail)).collect()
    };
    if width_mm(text, size_mm) <= room_mm {
        return text.to_owned();
    }
    (0..chars.len())
        .rev()
        .map(cut)
        .find(|short| width_mm(short, size_mm) <= room_mm)
        .unwrap_or_default()
}

/// `text` in lines of at most `room_mm`, broken at spaces.
pub fn wrapped(text: &str, size_mm: f64, room_mm: f64) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        let word = shortened(word, size_mm, room_mm);
        match lines.last_mut() {
            Some(line) if width_mm(&format!("{line} {word}"), size_mm) <= room_mm => {
                line.push(' ');
                line.push_str(&word);
            }
            _ => lines.push(word),
        }
    }
    lines
}

/// Widths in em, rounded up from a sans-serif font that is wider than its neighbours; from memory.
fn width_em(c: char) -> f64 {
    match c {
        'i' | 'j' | 'l' | '\'' => 0.28,
        ' ' | '.' | ',' | ':' | ';' | '|' => 0.34,
        'f' | 'r' | 't' | '(' | ')' | '-' | '/' | '!' => 0.42,
        'c' | 's' | 'z' => 0.55,
        'a' | 'e' | 'k' | 'o' | 'v' | 'x' | 'y' => 0.62,
        'm' | 'W' | '%' | '@' | '…' => 1.0,
        'w' | '<' | '>' | '=' | '+' | '#' => 0.84,
        'M' => 0.87,
        'A'..='Z' | '&' => 0.79,
        c if c.is_ascii() => 0.64,
        _ => 1.05,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_text_keeps_both_its_ends() {
        assert_eq!(shortened("R2", 4.0, 20.0), "R2");
        let short = shortened("meadow-batch-07", 4.0, 20.0);
        assert!(short.starts_with("me") && short.ends_with("07"), "{short}");
        assert!(width_mm(&short, 4.0) <= 20.0);
    }

    #[test]
    fn lines_keep_to_the_room_and_lose_no_word() {
        let text = "Seen from the fletched reference: the middle is where it landed.";
        let lines = wrapped(text, 3.5, 40.0);
        assert!(lines.len() > 1);
        assert!(lines.iter().all(|line| width_mm(line, 3.5) <= 40.0));
        assert_eq!(lines.join(" "), text);
    }
}
