//! `heads`: records a group of finished arrows, or shows where broadheads land.

use std::collections::BTreeMap;

use quarterturn_entry::{Advising, quantity, shorthand};
use quarterturn_geometry::Millimetres;
use quarterturn_journal::{Entry, Fault, GroupEntry, JournalError, read_group};
use quarterturn_tuning::{Head, HeadNameError, compare_heads};

use crate::answer::Answer;
use crate::args::HeadsArgs;
use crate::failure::{Failure, Kind, Marked};
use crate::input::{self, Input};
use crate::opened::Opened;
use crate::refusal::end_not_recorded;
use crate::{clock, json, screens};

/// What is said above a group in which something is wrong.
const NOT_RECORDED: &str = "the group was not recorded";

/// Records what was typed; where nothing was, shows what is known.
pub fn run(args: &HeadsArgs) -> Result<Answer, Failure> {
    let mut opened = Opened::at(&args.journal)?;
    let file = args.json.as_ref().and_then(|files| files.first());
    let line = (!args.line.is_empty()).then(|| args.line.join(" "));
    match (&line, file) {
        (Some(line), _) => record(&mut opened, args, line),
        (None, Some(file)) => from_json(&mut opened, &input::read(file)?),
        (None, None) => show(&opened, args),
    }
}

fn from_json(opened: &mut Opened, input: &Input) -> Result<Answer, Failure> {
    let refused = |faults: &[Fault]| {
        let marked = Marked::file(&input.origin, &input.text);
        end_not_recorded(NOT_RECORDED, faults, marked, |fault| fault.span(&input.text))
    };
    let group = read_group(&input.text).map_err(|faults| refused(&faults))?;
    let recorded = opened.journal.append(Entry::Group(group), &clock::stamp()?);
    let confirmed = recorded.map_err(|error| match error {
        JournalError::Refused { faults } => refused(&faults),
        error => error.into(),
    })?;
    let answer = Answer::new(json::recorded(&confirmed)?);
    Ok(answer.noticing(screens::what_else(&confirmed)))
}

fn record(opened: &mut Opened, args: &HeadsArgs, line: &str) -> Result<Answer, Failure> {
    let head: Head = args.head.parse().map_err(|error: HeadNameError| {
        Failure::new(Kind::Usage, "the value of --head cannot be used").hinting([error.to_string()])
    })?;
    let distance =
        args.distance.as_ref().map(|text| length("--distance", text, None)).transpose()?;
    let distance = distance.unwrap_or(opened.journal.state().history().setup.distance);
    let typed = shorthand::parse(line, opened.ruler().unit()).map_err(|located| {
        let marked = Marked::typed(line).wrong(located.span, located.fault.to_string());
        Failure::new(Kind::Data, NOT_RECORDED).marking(marked).hinting(located.fault.way_on())
    })?;
    let group = GroupEntry {
        distance_m: distance.metres(),
        head: head.to_string(),
        cold: args.cold,
        at: None,
        mounted: BTreeMap::new(),
        shots: typed.entry.shots.clone(),
    };
    let recorded = opened.journal.append(Entry::Group(group), &clock::stamp()?);
    let confirmed = recorded.map_err(|error| match error {
        JournalError::Refused { faults } => {
            end_not_recorded(NOT_RECORDED, &faults, Marked::typed(line), |fault| {
                typed.span(&fault.place)
            })
        }
        error => error.into(),
    })?;
    let text = if args.json.is_some() {
        json::recorded(&confirmed)?
    } else {
        screens::recorded_group(opened)
    };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}

fn show(opened: &Opened, args: &HeadsArgs) -> Result<Answer, Failure> {
    let unit = opened.ruler().unit();
    let together = args.together.as_ref().map(|text| length("--together", text, Some(unit)));
    let together = together.transpose()?;
    let groups: Vec<_> = opened.journal.state().groups_beside_this_bow().collect();
    let compared = compare_heads(&groups, together);
    let quiver = opened.quiver()?;
    let text = if args.json.is_some() {
        json::heads(opened, &compared, together, &quiver)?
    } else {
        screens::heads(opened, &compared, together, &quiver)
    };
    Ok(Answer::new(text).noticing(opened.notices()))
}

/// A length above zero that an option gives.
pub fn length(
    option: &str,
    text: &str,
    bare: Option<&'static quantity::Unit>,
) -> Result<Millimetres, Failure> {
    let length =
        quantity::length(text, bare).map_err(|fault| Failure::in_option(option, text, &fault))?;
    if length.mm() > 0.0 {
        return Ok(length);
    }
    let marked = Marked::typed(text).wrong(0..text.len(), "more than 0 is expected here");
    Err(Failure::new(Kind::Usage, format!("the value of {option} cannot be used"))
        .marking(marked)
        .hinting(["check the number and its unit"]))
}
