//! The screens of `explain`.

use crate::glossary::Topic;
use crate::wording::paragraph;

/// Every word, with what it is called besides.
pub fn words(topics: &[Topic]) -> String {
    let words = topics.iter().map(|topic| topic.names().collect::<Vec<_>>().join(", "));
    let list: Vec<_> = words.map(|words| paragraph("  ", &words)).collect();
    format!("{}\n\nThen: quarterturn explain WORD\n", list.join("\n"))
}

/// What is said of a word, and how much the number rests on in the journal of that name.
pub fn explained(topic: &Topic, journal: Option<String>, told: Option<String>) -> String {
    let title = match topic.also.as_slice() {
        [] => topic.title.to_owned(),
        also => format!("{} (also: {})", topic.title, also.join(", ")),
    };
    let mut blocks = vec![paragraph("", &title)];
    blocks.extend(topic.paragraphs.iter().map(|said| paragraph("", said)));
    blocks.extend(
        topic.counted.map(|counted| paragraph("", &format!("It rests on {}.", counted.said()))),
    );
    blocks.extend(
        journal.zip(told).map(|(name, told)| paragraph("", &format!("In {name}: {told}."))),
    );
    blocks.join("\n\n") + "\n"
}
