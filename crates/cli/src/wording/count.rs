//! How many of what.

/// "1 shot", "3 shots".
pub fn count(number: usize, singular: &str) -> String {
    if number == 1 { format!("1 {singular}") } else { format!("{number} {singular}s") }
}

#[cfg(test)]
mod tests {
    #[test]
    fn one_and_many() {
        assert_eq!(super::count(0, "shot"), "0 shots");
        assert_eq!(super::count(1, "shot"), "1 shot");
        assert_eq!(super::count(12, "shaft"), "12 shafts");
    }
}
