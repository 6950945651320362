//! `fix`: puts an earlier end right, by an entry of its own.

use quarterturn_entry::{Advising, closest, shorthand};
use quarterturn_journal::{EndEntry, Entry, FixEntry, JournalError, Log, LoggedEnd, ShotEntry};

use super::no_such_end::no_such_end;
use crate::answer::Answer;
use crate::args::FixArgs;
use crate::failure::{Failure, Kind, Marked};
use crate::opened::Opened;
use crate::refusal::end_not_recorded;
use crate::{clock, json, screens};

/// What is said above a correction in which something is wrong.
const NOT_CORRECTED: &str = "the end was not corrected";

/// Records a correction.
pub fn run(args: &FixArgs) -> Result<Answer, Failure> {
    let mut opened = Opened::at(&args.journal)?;
    let ends = Log::of(opened.journal.records()?).ends;
    let Some(LoggedEnd { seq, entry }) = args.end.checked_sub(1).and_then(|at| ends.get(at)) else {
        return Err(no_such_end(args.end, ends.len()));
    };
    let words = args.line.join(" ");
    let (end, line) = match &args.exchange {
        None => (corrected(&opened, entry, &words)?, words.as_str()),
        Some(pair) => (exchanged(entry, pair)?, pair.as_str()),
    };
    if end == *entry {
        let failure = Failure::new(Kind::Data, format!("end {} says this already", args.end));
        return Err(failure.hinting(["`log` shows how it was entered"]));
    }
    let fix = Entry::Fix(FixEntry { seq: *seq, end });
    let confirmed = opened.journal.append(fix, &clock::stamp()?).map_err(|error| match error {
        JournalError::Refused { faults } => {
            end_not_recorded(NOT_CORRECTED, &faults, Marked::typed(line), |_| 0..line.len())
        }
        error => error.into(),
    })?;
    let text = if args.json {
        json::recorded(&confirmed)?
    } else {
        screens::corrected_end(&opened, args.end)
    };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}

/// The end with what the line says of some of its arrows.
fn corrected(opened: &Opened, end: &EndEntry, line: &str) -> Result<EndEntry, Failure> {
    let arrows = shorthand::amendments(line, opened.ruler().unit()).map_err(|located| {
        let marked = Marked::typed(line).wrong(located.span, located.fault.to_string());
        Failure::new(Kind::Data, NOT_CORRECTED).marking(marked).hinting(located.fault.way_on())
    })?;
    let mut end = end.clone();
    for (name, words) in arrows {
        let at =
            end.shots.iter().position(|shot| Some(shot.shaft.as_str()) == line.get(name.clone()));
        let Some(shot) = at.and_then(|at| end.shots.get_mut(at)) else {
            return Err(not_in_the_end(&end, line, name));
        };
        words.amend(shot);
    }
    Ok(end)
}

/// The end with everything but name and mark of two arrows exchanged.
fn exchanged(end: &EndEntry, pair: &str) -> Result<EndEntry, Failure> {
    let two = pair.split_once(',').filter(|(_, other)| !other.contains(','));
    let Some((one, other)) = two else {
        return Err(Failure::new(Kind::Usage, "the value of --exchange cannot be used")
            .marking(Marked::typed(pair).wrong(0..pair.len(), "two arrows are expected here"))
            .hinting(["for example 4,11"]));
    };
    let mut end = end.clone();
    let place = |end: &EndEntry, name: &str| {
        let start = name.as_ptr().addr() - pair.as_ptr().addr();
        let at = end.shots.iter().position(|shot| shot.shaft == name.trim());
        at.ok_or_else(|| not_in_the_end(end, pair, start..start + name.len()))
    };
    let (one, other) = (place(&end, one)?, place(&end, other)?);
    let taken = |at: usize, end: &EndEntry| end.shots.get(at).cloned().unwrap_or_default();
    let (first, second) = (taken(one, &end), taken(other, &end));
    let keeping = |own: &ShotEntry, said: &ShotEntry| ShotEntry {
        shaft: own.shaft.clone(),
        index_deg: own.index_deg,
        ..said.clone()
    };
    for (at, shot) in [(one, keeping(&first, &second)), (other, keeping(&second, &first))] {
        if let Some(place) = end.shots.get_mut(at) {
            *place = shot;
        }
    }
    Ok(end)
}

fn not_in_the_end(end: &EndEntry, line: &str, span: std::ops::Range<usize>) -> Failure {
    let names = || end.shots.iter().map(|shot| shot.shaft.as_str());
    let typed = line.get(span.clone()).unwrap_or_default().trim();
    let meant = closest(typed, names()).map(|meant| format!("did you mean \"{meant}\"?"));
    let known = format!("it has {}", names().collect::<Vec<_>>().join(", "));
    let label = format!("no arrow \"{typed}\" was shot in this end");
    Failure::new(Kind::Data, NOT_CORRECTED)
        .marking(Marked::typed(line).wrong(span, label))
        .hinting(meant)
        .hinting([known])
}
