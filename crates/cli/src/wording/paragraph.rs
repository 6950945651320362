//! Long sentences, broken to fit a screen.

/// The widest line, in characters.
const WIDTH: usize = 80;

/// `lead` and the text behind it in lines of at most 80 characters, each after the first as far in as the text.
pub fn paragraph(lead: &str, text: &str) -> String {
    let indent = lead.chars().count();
    let (mut broken, mut column) = (lead.to_owned(), indent);
    for word in text.split_whitespace() {
        let width = word.chars().count();
        if column > indent && column + 1 + width > WIDTH {
            broken.push('\n');
            broken.push_str(&" ".repeat(indent));
            column = indent;
        } else if column > indent {
            broken.push(' ');
            column += 1;
        }
        broken.push_str(word);
        column += width;
    }
    broken
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
