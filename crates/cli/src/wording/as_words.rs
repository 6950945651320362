//! The word of an option, as people say it.

/// "hard hit" of `hard-hit`.
pub fn as_words(word: &str) -> String {
    word.replace('-', " ")
}
