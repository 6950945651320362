//! `quiver`: records what belongs to the quiver, or shows it.

use std::ops::Range;

use quarterturn_entry::quantity;
use quarterturn_geometry::Millimetres;
use quarterturn_journal::{Entry, JournalError, Limits, MountedHead, QuiverEntry};

use super::bench::{GRAINS_PER_POUND, read};
use crate::answer::Answer;
use crate::args::QuiverArgs;
use crate::failure::{Failure, Kind, Marked};
use crate::opened::Opened;
use crate::refusal::hints;
use crate::{clock, json, screens};

/// Records what was said; where nothing was, shows the quiver.
pub fn run(args: &QuiverArgs) -> Result<Answer, Failure> {
    match said(args)? {
        Some(entry) => record(args, entry),
        None => show(args),
    }
}

fn said(args: &QuiverArgs) -> Result<Option<QuiverEntry>, Failure> {
    let length = |option, text: &Option<String>| {
        read(option, text.as_ref(), |text| quantity::length(text, None).map(Millimetres::mm))
    };
    let mass = |option, text: &Option<String>| read(option, text.as_ref(), quantity::mass_gr);
    // A draw weight is typed as a mass.
    let pounds = |gr: Option<f64>| gr.map(|gr| gr / GRAINS_PER_POUND);
    let draw = |option, text: &Option<String>| mass(option, text).map(pounds);
    if let Some(order) = &args.order {
        let order = order.split(',').map(|name| name.trim().to_owned()).collect();
        return Ok(Some(QuiverEntry::Order { order }));
    }
    if let Some((shaft, carries)) = args.arrow.clone().zip(args.carries.clone()) {
        return Ok(Some(QuiverEntry::Head(MountedHead {
            shaft,
            carries,
            mass_gr: mass("--head-mass", &args.head_mass)?,
            runout_mm: length("--runout", &args.runout)?,
            width_mm: length("--width", &args.width)?,
        })));
    }
    let Some(read_on) = args.read_on.clone() else { return Ok(None) };
    Ok(Some(QuiverEntry::Limits(Limits {
        read_on,
        least_arrow_gr: mass("--least-mass", &args.least_mass)?,
        least_draw_lb: draw("--least-draw", &args.least_draw)?,
        least_width_mm: length("--least-width", &args.least_width)?,
        draw_lb: draw("--draw", &args.draw)?,
    })))
}

fn record(args: &QuiverArgs, entry: QuiverEntry) -> Result<Answer, Failure> {
    let mut opened = Opened::at(&args.journal)?;
    let recorded = opened.journal.append(Entry::Quiver(entry), &clock::stamp()?);
    let confirmed = recorded.map_err(|error| refused(error, args))?;
    let text =
        if args.json { json::recorded(&confirmed)? } else { screens::recorded_quiver(&opened)? };
    Ok(Answer::new(text).noticing(screens::what_else(&confirmed)))
}

/// What the journal refused, in the option that said it.
fn refused(error: JournalError, args: &QuiverArgs) -> Failure {
    let JournalError::Refused { faults } = &error else { return error.into() };
    let options = [
        ("order", "--order", &args.order),
        ("carries", "--carries", &args.carries),
        ("mass_gr", "--head-mass", &args.head_mass),
        ("runout_mm", "--runout", &args.runout),
        ("width_mm", "--width", &args.width),
        ("read_on", "--read-on", &args.read_on),
        ("least_arrow_gr", "--least-mass", &args.least_mass),
        ("least_draw_lb", "--least-draw", &args.least_draw),
        ("least_width_mm", "--least-width", &args.least_width),
        ("draw_lb", "--draw", &args.draw),
    ];
    let typed = faults.first().and_then(|fault| {
        let name = fault.place.name()?;
        let (_, option, text) = options.into_iter().find(|(member, ..)| *member == name)?;
        Some((fault, option, text.as_ref()?))
    });
    let Some((fault, option, text)) = typed else { return error.into() };
    let span = fault.place.nth().map_or(0..text.len(), |item| listed(text, item));
    Failure::new(Kind::Data, format!("the value of {option} cannot be used"))
        .marking(Marked::typed(text).wrong(span, fault.what.to_string()))
        .hinting(hints(faults))
}

/// Where the name `item` stands in "2, 9,4", the first being 0.
fn listed(text: &str, item: usize) -> Range<usize> {
    let before: usize = text.split(',').take(item).map(|name| name.len() + 1).sum();
    let name = text.split(',').nth(item).unwrap_or_default();
    let start = before + name.len() - name.trim_start().len();
    start..start + name.trim().len()
}

fn show(args: &QuiverArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let quiver = opened.quiver()?;
    let text =
        if args.json { json::quiver(&opened, &quiver)? } else { screens::quiver(&opened, &quiver) };
    Ok(Answer::new(text).noticing(opened.notices()))
}
