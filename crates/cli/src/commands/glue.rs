//! `glue`: records what was glued, or shows from when it may be shot.

use std::ops::Range;

use jiff::{Span, SpanRelativeTo, Unit};
use quarterturn_journal::{Entry, GlueEntry, JournalError, Word};

use crate::answer::Answer;
use crate::args::GlueArgs;
use crate::curing::Gluing;
use crate::failure::{Failure, Kind, Marked};
use crate::opened::Opened;
use crate::refusal::hints;
use crate::shaft_list::{self, Listed};
use crate::{clock, json, screens};

/// Records what was typed; where nothing was, shows what was glued.
pub fn run(args: &GlueArgs) -> Result<Answer, Failure> {
    match (&args.shafts, &args.cure) {
        (Some(shafts), Some(cure)) => record(args, shafts, cure),
        _ => show(args),
    }
}

fn record(args: &GlueArgs, shafts: &str, cure: &str) -> Result<Answer, Failure> {
    let listed =
        shaft_list::shafts(shafts).map_err(|fault| Failure::in_option("SHAFTS", shafts, &fault))?;
    let entry = GlueEntry {
        shafts: listed.iter().map(|shaft| shaft.name.to_string()).collect(),
        part: args.part.word().to_owned(),
        cure_h: hours(cure)?,
        at: args.at.clone(),
    };
    let mut opened = Opened::at(&args.journal)?;
    let confirmed = opened
        .journal
        .append(Entry::Glue(entry), &clock::stamp()?)
        .map_err(|error| refused(error, args, &listed))?;
    let text = if args.json {
        json::recorded(&confirmed)?
    } else {
        let glued = Gluing::all(opened.journal.state());
        screens::recorded_glue(&opened, glued.last())
    };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}

fn show(args: &GlueArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let glued = Gluing::all(opened.journal.state());
    let now = clock::moment();
    let text =
        if args.json { json::glued(&glued, now)? } else { screens::glued(&opened, &glued, now) };
    Ok(Answer::new(text).noticing(opened.notices()))
}

/// The hours of "24h" or "30 min".
fn hours(text: &str) -> Result<f64, Failure> {
    let days = SpanRelativeTo::days_are_24_hours();
    let hours = text.parse::<Span>().and_then(|span| span.total((Unit::Hour, days)));
    hours.map_err(|_| {
        unusable("--cure", text, 0..text.len(), "a time is expected here")
            .hinting(["for example 24h, 30min or 2d"])
    })
}

/// What the journal refused, in the option that said it.
fn refused(error: JournalError, args: &GlueArgs, listed: &[Listed]) -> Failure {
    let JournalError::Refused { faults } = &error else { return error.into() };
    let Some(fault) = faults.first() else { return error.into() };
    let (option, text) = match fault.place.name() {
        Some("cure_h") => ("--cure", args.cure.as_deref()),
        Some("at") => ("--at", args.at.as_deref()),
        _ => ("SHAFTS", args.shafts.as_deref()),
    };
    let Some(text) = text else { return error.into() };
    let item = fault.place.nth().and_then(|item| listed.get(item));
    let span = item.map_or(0..text.len(), |shaft| shaft.span.clone());
    unusable(option, text, span, &fault.what.to_string()).hinting(hints(faults))
}

fn unusable(option: &str, text: &str, span: Range<usize>, label: &str) -> Failure {
    Failure::new(Kind::Usage, format!("the value of {option} cannot be used"))
        .marking(Marked::typed(text).wrong(span, label))
}
