//! `end`: reads an end, records it and says it back.

use quarterturn_journal::{Confirmed, EndEntry, Entry, Fault, JournalError, Place, read_end};

use crate::answer::Answer;
use crate::args::EndArgs;
use crate::failure::{Failure, Kind, Marked};
use crate::opened::Opened;
use crate::refusal::{END_NOT_RECORDED, end_not_recorded};
use crate::{clock, input, json, screens};
use quarterturn_entry::Advising;
use quarterturn_entry::shorthand;

/// Records an end.
pub fn run(args: &EndArgs) -> Result<Answer, Failure> {
    let mut opened = Opened::at(&args.journal)?;
    match (&args.line, &args.file) {
        (_, Some(file)) => from_json(&mut opened, &input::read(file)?),
        (line, None) => from_line(&mut opened, line.as_deref().unwrap_or_default()),
    }
}

fn from_json(opened: &mut Opened, input: &input::Input) -> Result<Answer, Failure> {
    let refused = |faults: &[Fault]| {
        let marked = Marked::file(&input.origin, &input.text);
        end_not_recorded(faults, marked, |fault| fault.span(&input.text))
    };
    let entry = read_end(&input.text).map_err(|faults| refused(&faults))?;
    let unread = entry.unread();
    let confirmed = record(opened, entry, refused)?;
    let answer = Answer::new(json::recorded(&confirmed)?);
    Ok(answer.noticing(unread.iter().map(not_read)).noticing(screens::torn_kept(&confirmed)))
}

fn from_line(opened: &mut Opened, line: &str) -> Result<Answer, Failure> {
    let typed = shorthand::parse(line, opened.ruler().unit()).map_err(|located| {
        let marked = Marked::typed(line).wrong(located.span, located.fault.to_string());
        Failure::new(Kind::Data, END_NOT_RECORDED).marking(marked).hinting(located.fault.way_on())
    })?;
    let confirmed = record(opened, typed.entry.clone(), |faults| {
        end_not_recorded(faults, Marked::typed(line), |fault| typed.span(&fault.place))
    })?;
    let answer = Answer::new(screens::recorded_end(opened));
    Ok(answer.noticing(screens::torn_kept(&confirmed)))
}

/// Appends an end; what the journal finds wrong with it is told by `refused`.
fn record(
    opened: &mut Opened,
    entry: EndEntry,
    refused: impl Fn(&[Fault]) -> Failure,
) -> Result<Confirmed, Failure> {
    let stamp = clock::stamp()?;
    opened.journal.append(Entry::End(entry), &stamp).map_err(|error| match error {
        JournalError::Refused { faults } => refused(&faults),
        error => error.into(),
    })
}

fn not_read(place: &Place) -> String {
    format!("{place} is kept in the journal, and not read: it is not a name that is known here")
}
