//! `bow`: the bow was changed, or stays as it is.

use quarterturn_journal::{BowEntry, Entry, Word};

use crate::answer::Answer;
use crate::args::BowArgs;
use crate::failure::{Failure, Kind, Marked};
use crate::opened::Opened;
use crate::{json, screens};
use quarterturn_entry::quantity::leading_number;

/// Records what was done to the bow.
pub fn run(args: &BowArgs) -> Result<Answer, Failure> {
    let entry = entry(args)?;
    let mut opened = Opened::to_add(&args.journal)?;
    let confirmed = opened.append(Entry::Bow(entry))?;
    let text = match &args.leave {
        _ if args.json => json::recorded(&confirmed)?,
        Some(_) => screens::recorded_leave(&opened),
        None => screens::recorded_bow(&opened, args.part),
    };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}

fn entry(args: &BowArgs) -> Result<BowEntry, Failure> {
    if let Some(leave) = &args.leave {
        return Ok(BowEntry::Leave { leave: leave.clone() });
    }
    Ok(BowEntry::Change {
        note: args.note.clone().unwrap_or_default(),
        part: args.part.map(|part| part.word().to_owned()),
        move_mm: args.move_mm.as_deref().map(right_and_up).transpose()?,
    })
}

/// The two numbers of `-0.8,0`.
fn right_and_up(text: &str) -> Result<[f64; 2], Failure> {
    let (right, up) = text.split_once(',').ok_or_else(|| two_numbers(text, 0))?;
    Ok([whole_number(text, right, 0)?, whole_number(text, up, right.len() + 1)?])
}

/// The number that is all of `part`, which stands at byte `at` of `text`.
fn whole_number(text: &str, part: &str, at: usize) -> Result<f64, Failure> {
    let number = leading_number(part)
        .map_err(|fault| Failure::in_option("--move-mm", text, &fault.shifted(at)))?;
    let (_, rest) = part.split_at(number.end);
    if rest.trim().is_empty() { Ok(number.value) } else { Err(two_numbers(text, at + number.end)) }
}

fn two_numbers(text: &str, at: usize) -> Failure {
    Failure::new(Kind::Usage, "the value of --move-mm cannot be used")
        .marking(Marked::typed(text).wrong(at..text.len(), "two plain numbers are expected"))
        .hinting(["millimetres to the right and up, for example -0.8,0"])
}
