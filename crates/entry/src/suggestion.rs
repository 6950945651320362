//! "Did you mean": the nearest of the names that exist.

/// More letters wrong than this, and it was another word.
const FARTHEST: usize = 2;

/// The candidate nearest to `typed`, case apart, at most two letters away and not wholly another word.
pub fn closest<'a>(typed: &str, candidates: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let typed = typed.to_lowercase();
    let letters = typed.chars().count();
    candidates
        .into_iter()
        // What is so much longer or shorter need not be compared letter by letter.
        .filter(|name| name.chars().count().abs_diff(letters) <= FARTHEST)
        .map(|name| (strsim::damerau_levenshtein(&typed, &name.to_lowercase()), name))
        .filter(|(distance, name)| *distance <= FARTHEST && *distance < name.chars().count())
        .min_by_key(|(distance, _)| *distance)
        .map(|(_, name)| name)
}

#[cfg(test)]
mod tests {
    use super::closest;

    #[test]
    fn the_nearest_name_within_two_letters() {
        assert_eq!(closest("inn", ["mm", "cm", "in"]), Some("in"));
        assert_eq!(closest("shaft-l", ["shaft-1", "shaft-22"]), Some("shaft-1"));
        assert_eq!(closest("a1", ["A1", "B2"]), Some("A1"));
        assert_eq!(closest("7", ["1", "2", "R"]), None);
        assert_eq!(closest("elephant", ["mm", "cm"]), None);
    }
}
