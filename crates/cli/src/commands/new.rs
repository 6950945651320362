//! `new`: settles what was typed and begins the journal.

use std::ops::Range;
use std::path::Path;

use quarterturn_geometry::Index;
use quarterturn_journal::{FaceUnit, Fault, Journal, JournalError, NewEntry, NewShaft, Step, Word};

use crate::alike::alike;
use crate::answer::Answer;
use crate::args::NewArgs;
use crate::failure::{Failure, Kind, Marked};
use crate::opened::{Opened, unit};
use crate::refusal::hints;
use crate::shaft_list::{self, Listed, ListedMark};
use crate::{clock, json, screens};
use quarterturn_entry::quantity;

/// The mass of a fletched arrow where none is given, grains: common practice for a compound bow.
const USUAL_ARROW_GR: f64 = 400.0;

/// Its speed where none is given, m/s: common practice for a compound bow.
const USUAL_SPEED_M_S: f64 = 82.0;

/// Begins a journal.
pub fn run(args: &NewArgs) -> Result<Answer, Failure> {
    let lists = Lists::of(args)?;
    let stamp = clock::stamp()?;
    let journal = Journal::create(&args.journal, entry(args, &lists)?, &stamp)
        .map_err(|error| refused(error, args, &lists))?;
    let opened = Opened { journal, path: args.journal.clone() };
    let text = if args.json { json::begun(&opened, &stamp)? } else { screens::begun(&opened) };
    let names = lists.shafts.iter().chain(&lists.references).map(|one| one.name.as_str());
    let names = alike(&names.collect::<Vec<_>>());
    Ok(Answer::new(text).noticing(names).noticing(unfound(&args.journal)))
}

/// What is to be said of a name that the program will not look for.
fn unfound(journal: &Path) -> Option<String> {
    let found = journal.extension().is_some_and(|ending| ending == "journal");
    (!found).then(|| "a name that ends in .journal is found by `quarterturn` alone".to_owned())
}

/// The lists of names, with where each was typed.
struct Lists {
    shafts: Vec<Listed>,
    references: Vec<Listed>,
    marks: Vec<ListedMark>,
}

impl Lists {
    fn of(args: &NewArgs) -> Result<Self, Failure> {
        let shafts = shaft_list::shafts(&args.shafts)
            .map_err(|fault| Failure::in_option("--shafts", &args.shafts, &fault))?;
        let references = shaft_list::shafts(&args.reference)
            .map_err(|fault| Failure::in_option("--reference", &args.reference, &fault))?;
        let marks = args.index.as_deref().map_or(Ok(Vec::new()), |text| {
            shaft_list::marks(text, &shafts)
                .map_err(|fault| Failure::in_option("--index", text, &fault))
        })?;
        Ok(Self { shafts, references, marks })
    }

    fn index_of(&self, shaft: &Listed) -> Index {
        let mark = self.marks.iter().find(|mark| mark.shaft.name == shaft.name);
        mark.map_or(Index::TWELVE, |mark| mark.index)
    }
}

fn entry(args: &NewArgs, lists: &Lists) -> Result<NewEntry, Failure> {
    let shaft = |shaft: &Listed| NewShaft {
        name: shaft.name.to_string(),
        index_deg: lists.index_of(shaft).degrees(),
    };
    let lighter = args.bare_lighter.as_ref();
    let lighter_gr = lighter.map(|text| mass_gr("--bare-lighter", text)).transpose()?;
    Ok(NewEntry {
        shafts: lists.shafts.iter().map(shaft).collect(),
        references: lists.references.iter().map(|shaft| shaft.name.to_string()).collect(),
        distance_m: quantity::length(&args.distance, None)
            .map_err(|fault| Failure::in_option("--distance", &args.distance, &fault))?
            .metres(),
        tolerance_mm: quantity::length(&args.tolerance, args.units.map(unit))
            .map_err(|fault| Failure::in_option("--tolerance", &args.tolerance, &fault))?
            .mm(),
        units: args.units.unwrap_or(FaceUnit::Millimetres).word().to_owned(),
        arrows_per_end: args.arrows_per_end,
        positions: args.positions,
        aim: Some(args.aim.unwrap_or_default().word().to_owned()),
        shots_per_evening: Some(args.shots_per_evening),
        turns_per_nock: Some(args.turns_per_nock),
        bare_lighter_gr: lighter_gr,
        arrow_gr: lighter.map(|_| arrow_gr(args)).transpose()?,
        arrow_speed_m_s: lighter.map(|_| arrow_speed_m_s(args)).transpose()?,
        bow: args.bow.clone(),
        release: args.release.clone(),
        hand: args.hand.clone(),
    })
}

fn mass_gr(option: &str, text: &str) -> Result<f64, Failure> {
    quantity::mass_gr(text).map_err(|fault| Failure::in_option(option, text, &fault))
}

fn arrow_gr(args: &NewArgs) -> Result<f64, Failure> {
    args.arrow_mass.as_ref().map_or(Ok(USUAL_ARROW_GR), |text| mass_gr("--arrow-mass", text))
}

fn arrow_speed_m_s(args: &NewArgs) -> Result<f64, Failure> {
    args.arrow_speed.as_ref().map_or(Ok(USUAL_SPEED_M_S), |text| {
        quantity::speed_m_s(text).map_err(|fault| Failure::in_option("--arrow-speed", text, &fault))
    })
}

/// What the journal refused, in the option that said it.
fn refused(error: JournalError, args: &NewArgs, lists: &Lists) -> Failure {
    let JournalError::Refused { faults } = &error else { return error.into() };
    let typed = faults.first().and_then(|fault| Some((fault, option_of(fault, args, lists)?)));
    let Some((fault, Typed { option, text, span })) = typed else { return error.into() };
    Failure::new(Kind::Usage, format!("the value of {option} cannot be used"))
        .marking(Marked::typed(&text).wrong(span, fault.what.to_string()))
        .hinting(hints(faults))
}

/// A part of what was typed.
struct Typed {
    option: &'static str,
    text: String,
    span: Range<usize>,
}

/// The option that gave what stands at the place of a fault.
fn option_of(fault: &Fault, args: &NewArgs, lists: &Lists) -> Option<Typed> {
    let (option, text, listed) = match fault.place.name()? {
        "shafts" => ("--shafts", args.shafts.clone(), Some(&lists.shafts)),
        "references" => ("--reference", args.reference.clone(), Some(&lists.references)),
        "distance_m" => ("--distance", args.distance.clone(), None),
        "tolerance_mm" => ("--tolerance", args.tolerance.clone(), None),
        "arrows_per_end" => ("--arrows-per-end", args.arrows_per_end.to_string(), None),
        "shots_per_evening" => ("--shots-per-evening", args.shots_per_evening.to_string(), None),
        "turns_per_nock" => ("--turns-per-nock", args.turns_per_nock.to_string(), None),
        "positions" => ("--positions", args.positions.to_string(), None),
        "bare_lighter_gr" => ("--bare-lighter", args.bare_lighter.clone()?, None),
        "arrow_gr" => ("--arrow-mass", args.arrow_mass.clone()?, None),
        "arrow_speed_m_s" => ("--arrow-speed", args.arrow_speed.clone()?, None),
        _ => return None,
    };
    let item = fault.place.steps().iter().find_map(|step| match step {
        Step::Item(item) => Some(*item),
        Step::Member(_) => None,
    });
    let listed = listed.zip(item).and_then(|(listed, item)| listed.get(item));
    let span = listed.map_or(0..text.len(), |listed| listed.span.clone());
    Some(Typed { option, text, span })
}
