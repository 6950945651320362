//! `explain`: what a word or a number means, and what it rests on.

use quarterturn_entry::closest;

use crate::answer::Answer;
use crate::args::ExplainArgs;
use crate::failure::{Failure, Kind};
use crate::glossary::{topic, topics};
use crate::opened::Opened;
use crate::{json, screens};

/// Says it; a journal is only read.
pub fn run(args: &ExplainArgs) -> Result<Answer, Failure> {
    if args.word.is_empty() {
        let topics: Vec<_> = topics().collect();
        let text = if args.json { json::words(&topics)? } else { screens::words(&topics) };
        return Ok(Answer::new(text));
    }
    let word = args.word.join(" ");
    let topic = topic(&word).ok_or_else(|| unknown(&word))?;
    let opened = args.journal.as_deref().map(Opened::at).transpose()?;
    let rests_on = opened.as_ref().zip(topic.counted);
    let told = rests_on.map(|(opened, counted)| counted.told(opened, &opened.advice()));
    let text = if args.json {
        json::explained(&topic, told)?
    } else {
        screens::explained(&topic, opened.as_ref().map(Opened::name), told)
    };
    Ok(Answer::new(text).noticing(opened.and_then(|opened| opened.notices())))
}

fn unknown(word: &str) -> Failure {
    let names = topics().flat_map(|topic| topic.names().collect::<Vec<_>>()).collect::<Vec<_>>();
    let nearest = closest(word, names).map(|name| format!("did you mean \"{name}\"?"));
    let failure = Failure::new(Kind::Usage, format!("no screen has the word \"{word}\""));
    failure.hinting(nearest).hinting(["`quarterturn explain` lists every word"])
}
