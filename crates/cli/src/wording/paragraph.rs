//! Long sentences, broken to fit a screen.

/// The widest line, in characters.
const WIDTH: usize = 80;

/// `lead` and the text behind it in lines of at most 80 characters, each after the first as far in as the text.
pub fn paragraph(lead: &str, text: &str) -> String {
    let indent = lead.chars().count();
    let between = format!("\n{}", " ".repeat(indent));
    lead.to_owned() + &lines(text, WIDTH.saturating_sub(indent)).join(&between)
}

/// The words of the text in lines of at most so many characters; a longer word has a line to itself.
pub fn lines(text: &str, width: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for word in text.split_whitespace() {
        match lines.last_mut() {
            Some(line) if line.chars().count() + 1 + word.chars().count() <= width => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::paragraph;

    #[test]
    fn no_line_is_wider_than_the_screen() {
        let broken = paragraph("  - ", &"several words ".repeat(20));
        assert!(broken.lines().count() > 3);
        assert!(broken.lines().all(|line| line.chars().count() <= 80));
        assert!(broken.starts_with("  - several words"));
        assert!(broken.lines().skip(1).all(|line| line.starts_with("    ")));
        assert_eq!(broken.split_whitespace().count(), 41);
    }
}
