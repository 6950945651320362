//! Every word and number that a screen shows, as docs/words.md explains it.

mod counted;
mod topic;

pub use counted::Counted;
pub use topic::Topic;

/// The document itself: what is read there is what the program says.
const WORDS: &str = include_str!("../../../../docs/words.md");

/// Every topic, in the order of the document.
pub fn topics() -> impl Iterator<Item = Topic<'static>> {
    WORDS.split("\n## ").skip(1).map(Topic::of)
}

/// The topic that explains `word`, capitals apart.
pub fn topic(word: &str) -> Option<Topic<'static>> {
    topics().find(|topic| topic.names().any(|name| name.eq_ignore_ascii_case(word)))
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use super::*;

    #[test]
    fn every_word_leads_to_one_topic_that_says_something() {
        let mut names = BTreeSet::new();
        for topic in topics() {
            assert!(!topic.paragraphs.is_empty(), "{}", topic.title);
            for name in topic.names() {
                assert!(names.insert(name.to_lowercase()), "{name} is explained twice");
            }
        }
        assert_eq!(topic("Within").map(|topic| topic.title), Some("inside"));
        assert!(topic("nonsense").is_none());
    }

    #[test]
    fn what_a_number_rests_on_is_one_of_a_few_things() {
        let document = WORDS.lines().filter(|line| line.starts_with("n: ")).count();
        assert_eq!(topics().filter(|topic| topic.counted.is_some()).count(), document);
    }
}
