//! Lists in a sentence.

/// "a, b and c".
pub fn all<T: ToString>(items: impl IntoIterator<Item = T>) -> String {
    listed(items, "and")
}

/// "a, b or c".
pub fn either<T: ToString>(items: impl IntoIterator<Item = T>) -> String {
    listed(items, "or")
}

fn listed<T: ToString>(items: impl IntoIterator<Item = T>, word: &str) -> String {
    let mut items: Vec<String> = items.into_iter().map(|item| item.to_string()).collect();
    match items.pop() {
        None => String::new(),
        Some(last) if items.is_empty() => last,
        Some(last) => format!("{} {word} {last}", items.join(", ")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lists_of_every_length() {
        assert_eq!(all([] as [&str; 0]), "");
        assert_eq!(all([7]), "7");
        assert_eq!(all([7, 8]), "7 and 8");
        assert_eq!(either(["mm", "cm", "in"]), "mm, cm or in");
    }
}
