//! One word of the document, with what it is called besides and what is said of it.

use super::Counted;

/// What is said of one word.
pub struct Topic<'a> {
    /// The word.
    pub title: &'a str,
    /// What it is called besides.
    pub also: Vec<&'a str>,
    /// What is said, a paragraph each.
    pub paragraphs: Vec<String>,
    /// What the number rests on, where it is one.
    pub counted: Option<Counted>,
}

impl<'a> Topic<'a> {
    /// Reads a part of the document: the title, perhaps a line `also:`, paragraphs, perhaps one `n:`.
    pub fn of(part: &'a str) -> Self {
        let (head, body) = part.split_once("\n\n").unwrap_or((part, ""));
        let (title, also) = head.split_once("\nalso: ").unwrap_or((head, ""));
        let blocks = body.split("\n\n").map(str::trim).filter(|block| !block.is_empty());
        let (n, text): (Vec<_>, Vec<_>) = blocks.partition(|block| block.starts_with("n: "));
        Self {
            title: title.trim(),
            also: also.split(", ").filter(|name| !name.is_empty()).collect(),
            paragraphs: text.iter().map(|block| block.replace('\n', " ")).collect(),
            counted: n.first().and_then(|line| Counted::of(line.trim_start_matches("n: "))),
        }
    }

    /// The word and what it is called besides.
    pub fn names(&self) -> impl Iterator<Item = &'a str> {
        [self.title].into_iter().chain(self.also.iter().copied())
    }
}
