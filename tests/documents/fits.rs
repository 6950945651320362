//! Whether what came is what is shown.

/// Whether `came` is what is shown, where a line of three dots stands for any number of lines, and three dots at
/// the end of a line for its rest.
pub fn fits(shown: &[&str], came: &[&str]) -> bool {
    match (shown, came) {
        (["...", rest @ ..], _) => (0..=came.len()).any(|skipped| fits(rest, &came[skipped..])),
        ([first, shown @ ..], [line, came @ ..]) => {
            let begins = |start| line.starts_with(start);
            (first == line || first.strip_suffix("...").is_some_and(begins)) && fits(shown, came)
        }
        (shown, came) => shown.is_empty() && came.is_empty(),
    }
}

#[test]
fn three_dots_stand_for_what_is_left_out() {
    assert!(fits(&["a", "...", "d"], &["a", "b", "c", "d"]) && fits(&["a", "..."], &["a"]));
    assert!(fits(&["evening ...", "b"], &["evening 2027-03-02", "b"]));
    assert!(!fits(&["a", "...", "d"], &["a", "b"]) && !fits(&["a"], &["a", "b"]));
}
