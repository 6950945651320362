//! The JSON of `explain`.

use serde::Serialize;

use super::line;
use crate::failure::Failure;
use crate::glossary::{Counted, Topic};

const SCHEMA: &str = "quarterturn.explain/1";

#[derive(Serialize)]
struct Words<'a> {
    schema: &'static str,
    words: Vec<Word<'a>>,
}

#[derive(Serialize)]
struct Explained<'a> {
    schema: &'static str,
    #[serde(flatten)]
    word: Word<'a>,
    text: &'a [String],
    #[serde(skip_serializing_if = "Option::is_none")]
    rests_on: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    here: Option<String>,
}

#[derive(Serialize)]
struct Word<'a> {
    word: &'a str,
    also: &'a [&'a str],
}

impl<'a> Word<'a> {
    fn of(topic: &'a Topic<'a>) -> Self {
        Self { word: topic.title, also: &topic.also }
    }
}

/// Every word, with what it is called besides.
pub fn words(topics: &[Topic]) -> Result<String, Failure> {
    line(&Words { schema: SCHEMA, words: topics.iter().map(Word::of).collect() })
}

/// What is said of a word, and how much the number rests on here.
pub fn explained(topic: &Topic, here: Option<String>) -> Result<String, Failure> {
    let rests_on = topic.counted.map(Counted::said);
    line(&Explained {
        schema: SCHEMA,
        word: Word::of(topic),
        text: &topic.paragraphs,
        rests_on,
        here,
    })
}
