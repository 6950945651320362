//! `bench`: what was measured in the workshop, and what the set looks like.

use std::ops::Range;

use quarterturn_bench::Grains;
use quarterturn_entry::Located;
use quarterturn_entry::quantity::{self, QuantityFault};
use quarterturn_geometry::Millimetres;
use quarterturn_journal::{BenchEntry, BenchMeasures, Entry, JournalError, Place, Step, Word};

use crate::answer::Answer;
use crate::args::{BenchArgs, MeasuredArgs, SetArgs};
use crate::failure::{Failure, Kind, Marked};
use crate::opened::Opened;
use crate::refusal::hints;
use crate::workshop::{Asked, Crooked, Limit, Workshop, predicted};
use crate::{clock, json, screens, spine_list};

/// Records measures of a shaft, or shows the set.
pub fn run(args: &BenchArgs) -> Result<Answer, Failure> {
    match &args.shaft {
        Some(shaft) => record(args, shaft),
        None => show(args),
    }
}

fn record(args: &BenchArgs, shaft: &str) -> Result<Answer, Failure> {
    let said = measures(&args.measured)?;
    let entry = BenchEntry { shaft: shaft.to_owned(), measures: said.clone() };
    let mut opened = Opened::at(&args.journal)?;
    let confirmed = opened
        .journal
        .append(Entry::Bench(entry), &clock::stamp()?)
        .map_err(|error| refused(error, &args.measured))?;
    let text = if args.json {
        json::recorded(&confirmed)?
    } else {
        screens::recorded_bench(&opened, shaft)
    };
    Ok(Answer::new(text)
        .noticing(screens::beside_the_measures(&opened, shaft, &said))
        .noticing(screens::what_else(&confirmed)))
}

fn show(args: &BenchArgs) -> Result<Answer, Failure> {
    let asked = asked(&args.asked)?;
    let opened = Opened::at(&args.journal)?;
    let state = opened.journal.state();
    let workshop = Workshop::of(state);
    let predicted = predicted(&opened.advice(), state);
    let chosen = args.asked.best.map(|count| workshop.best(count)).transpose()?;
    let text = if args.json {
        json::bench(&state.history().setup, &workshop, &asked, chosen.as_ref(), &predicted)?
    } else {
        screens::bench(&opened, &workshop, &asked, chosen.as_ref(), &predicted)
    };
    Ok(Answer::new(text).noticing(opened.notices()))
}

/// What an option gave, read by `read`.
pub fn read<T>(
    option: &str,
    text: Option<&String>,
    read: impl Fn(&str) -> Result<T, Located<QuantityFault>>,
) -> Result<Option<T>, Failure> {
    let value = text.map(|text| read(text).map_err(|f| Failure::in_option(option, text, &f)));
    value.transpose()
}

fn length_mm(text: &str) -> Result<f64, Located<QuantityFault>> {
    quantity::length(text, None).map(Millimetres::mm)
}

fn measures(args: &MeasuredArgs) -> Result<BenchMeasures, Failure> {
    let length = |option, text: &Option<String>| read(option, text.as_ref(), length_mm);
    let mass = |option, text: &Option<String>| read(option, text.as_ref(), quantity::mass_gr);
    let side = |option, text: &Option<String>| read(option, text.as_ref(), quantity::angle_deg);
    let spine = |text: &String| {
        spine_list::parse(text).map_err(|fault| Failure::in_option("--spine", text, &fault))
    };
    Ok(BenchMeasures {
        mass_gr: mass("--mass", &args.mass)?,
        length_mm: length("--length", &args.length)?,
        straightness_mm: length("--straight", &args.straight)?,
        straightness_point_mm: length("--straight-point", &args.straight_point)?,
        straightness_nock_mm: length("--straight-nock", &args.straight_nock)?,
        crooked_side_deg: side("--crooked-side", &args.crooked_side)?,
        cut_point_mm: length("--cut-point", &args.cut_point)?,
        cut_nock_mm: length("--cut-nock", &args.cut_nock)?,
        spine: args.spine.as_ref().map(spine).transpose()?.unwrap_or_default(),
        spine_standard: args.spine_standard.map(|standard| standard.word().to_owned()),
        stiff_side_deg: side("--stiff-side", &args.stiff_side)?,
        heavy_side_deg: side("--heavy-side", &args.heavy_side)?,
        square_runout_mm: length("--square", &args.square)?,
        wobble_mm: length("--wobble", &args.wobble)?,
        bare_mass_gr: mass("--bare-mass", &args.bare_mass)?,
        finished_mass_gr: mass("--finished-mass", &args.finished_mass)?,
        balance_mm: length("--balance", &args.balance)?,
    })
}

fn asked(args: &SetArgs) -> Result<Asked, Failure> {
    let speed_m_s = read("--speed", args.speed.as_ref(), quantity::speed_m_s)?;
    let speed_m_s = above_zero("--speed", args.speed.as_ref(), speed_m_s)?;
    let draw_gr = read("--draw", args.draw.as_ref(), quantity::mass_gr)?;
    let draw_gr = above_zero("--draw", args.draw.as_ref(), draw_gr)?;
    let number = |text: &str| quantity::mass_gr(&format!("{text}gr"));
    let least = read("--least-per-pound", args.least_per_pound.as_ref(), number)?;
    let least_gr_lb = above_zero("--least-per-pound", args.least_per_pound.as_ref(), least)?;
    let diameter = read("--diameter", args.diameter.as_ref(), length_mm)?;
    let diameter = above_zero("--diameter", args.diameter.as_ref(), diameter)?;
    let point = read("--point-length", args.point_length.as_ref(), length_mm)?;
    let point = above_zero("--point-length", args.point_length.as_ref(), point)?;
    Ok(Asked {
        speed_m_s,
        limit: draw_gr.map(|gr| Limit { draw_lbf: gr / GRAINS_PER_POUND, least_gr_lb }),
        crooked: diameter.zip(point).map(|(diameter_mm, point_mm)| Crooked {
            diameter: Millimetres::new(diameter_mm),
            point: Millimetres::new(point_mm),
        }),
    })
}

/// A draw weight is typed as a mass: the pound is 7000 grains.
pub const GRAINS_PER_POUND: f64 = 7000.0;

/// The value of an option, if it is above zero.
fn above_zero(
    option: &str,
    text: Option<&String>,
    value: Option<f64>,
) -> Result<Option<f64>, Failure> {
    let text = text.map(String::as_str).unwrap_or_default();
    match value.map(Grains::new).transpose() {
        Ok(_) => Ok(value),
        Err(_) => Err(Failure::new(Kind::Usage, format!("the value of {option} cannot be used"))
            .marking(Marked::typed(text).wrong(0..text.len(), "more than 0 is expected"))
            .hinting(["check the number and its unit"])),
    }
}

/// What the journal refused, in the option that said it.
fn refused(error: JournalError, args: &MeasuredArgs) -> Failure {
    let JournalError::Refused { faults } = &error else { return error.into() };
    let typed =
        faults.first().and_then(|fault| Some((fault, option_of(fault.place.name()?, args)?)));
    let Some((fault, (option, text))) = typed else { return error.into() };
    Failure::new(Kind::Usage, format!("the value of {option} cannot be used"))
        .marking(Marked::typed(text).wrong(span(&fault.place, text), fault.what.to_string()))
        .hinting(hints(faults))
}

/// The bytes of `text` that a fault is about: one item of a list, or all of it.
fn span(place: &Place, text: &str) -> Range<usize> {
    let item = place.steps().iter().find_map(|step| match step {
        Step::Item(item) => Some(*item),
        Step::Member(_) => None,
    });
    let Some(item) = item else { return 0..text.len() };
    let before: usize = text.split(',').take(item).map(|item| item.len() + 1).sum();
    before..before + text.split(',').nth(item).map_or(0, str::len)
}

/// The option that gave a member, and what was typed there.
fn option_of<'a>(member: &str, args: &'a MeasuredArgs) -> Option<(&'static str, &'a str)> {
    let (option, text) = match member {
        "mass_gr" => ("--mass", &args.mass),
        "length_mm" => ("--length", &args.length),
        "straightness_mm" => ("--straight", &args.straight),
        "straightness_point_mm" => ("--straight-point", &args.straight_point),
        "straightness_nock_mm" => ("--straight-nock", &args.straight_nock),
        "spine" | "side_deg" | "sag_in" => ("--spine", &args.spine),
        "stiff_side_deg" => ("--stiff-side", &args.stiff_side),
        "heavy_side_deg" => ("--heavy-side", &args.heavy_side),
        "crooked_side_deg" => ("--crooked-side", &args.crooked_side),
        "cut_point_mm" => ("--cut-point", &args.cut_point),
        "cut_nock_mm" => ("--cut-nock", &args.cut_nock),
        "bare_mass_gr" => ("--bare-mass", &args.bare_mass),
        "square_runout_mm" => ("--square", &args.square),
        "wobble_mm" => ("--wobble", &args.wobble),
        "finished_mass_gr" => ("--finished-mass", &args.finished_mass),
        "balance_mm" => ("--balance", &args.balance),
        _ => return None,
    };
    Some((option, text.as_deref()?))
}
