//! `rehearse`: what a dozen will take, from many invented ones.

use quarterturn_geometry::Millimetres;
use quarterturn_journal::FaceUnit;
use quarterturn_tuning::Leans;

use crate::answer::Answer;
use crate::args::RehearseArgs;
use crate::failure::{Failure, Kind, Marked};
use crate::opened::unit;
use crate::progress::Progress;
use crate::rehearsal::{Conditions, rehearse};
use crate::wording::Ruler;
use crate::{json, screens};
use quarterturn_entry::quantity;

/// As far as a journal may be shot from.
const FARTHEST: Millimetres = Millimetres::from_metres(200.0);

/// As wide as a butt.
const WIDEST: Millimetres = Millimetres::from_metres(3.0);

/// Plays the dozens, and says what they took.
pub fn run(args: &RehearseArgs) -> Result<Answer, Failure> {
    let asked = Conditions {
        group: length("--group", &args.group, args.units, WIDEST)?,
        distance: length("--distance", &args.distance, None, FARTHEST)?,
        tolerance: length("--tolerance", &args.tolerance, args.units, WIDEST)?,
        shafts: args.shafts,
        arrows_per_end: args.arrows_per_end,
        leans: if args.no_leans { Leans::NotRead } else { Leans::Read },
    };
    let found = rehearse(asked, args.dozens.into(), args.seed, &Progress::new("rehearsing"));
    let ruler = Ruler::new(unit(args.units.unwrap_or(FaceUnit::Millimetres)));
    Ok(Answer::new(if args.json {
        json::rehearsed(&found, args.seed)?
    } else {
        screens::rehearsed(&found, ruler)
    }))
}

/// A length above zero and at most `most`; without a unit it is in `units`, where these are given.
fn length(
    option: &str,
    text: &str,
    units: Option<FaceUnit>,
    most: Millimetres,
) -> Result<Millimetres, Failure> {
    let length = quantity::length(text, units.map(unit))
        .map_err(|fault| Failure::in_option(option, text, &fault))?;
    if length > Millimetres::ZERO && length <= most {
        return Ok(length);
    }
    let label = format!("more than 0 and at most {} m is expected", most.metres());
    Err(Failure::new(Kind::Usage, format!("the value of {option} cannot be used"))
        .marking(Marked::typed(text).wrong(0..text.len(), label))
        .hinting(["check the number and its unit"]))
}
