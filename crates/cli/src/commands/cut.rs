//! `cut`: how much comes off which end of every shaft.

use quarterturn_bench::Saw;
use quarterturn_entry::quantity;
use quarterturn_geometry::Millimetres;

use crate::answer::Answer;
use crate::args::CutArgs;
use crate::commands::length;
use crate::failure::{Failure, Kind, Marked};
use crate::opened::Opened;
use crate::workshop::{CutList, Workshop};
use crate::{json, screens};

/// Shows where to cut; the journal is only read.
pub fn run(args: &CutArgs) -> Result<Answer, Failure> {
    let target = length("--to", &args.to, None)?;
    let saw = Saw {
        kerf: not_negative("--kerf", &args.kerf)?,
        squaring: not_negative("--squaring", &args.squaring)?,
    };
    let opened = Opened::at(&args.journal)?;
    let workshop = Workshop::of(opened.journal.state());
    let list = CutList::of(&workshop, opened.journal.state(), target, saw);
    let text = if args.json { json::cut(&list)? } else { screens::cut(&opened, &list) };
    Ok(Answer::new(text).noticing(opened.notices()))
}

fn not_negative(option: &str, text: &str) -> Result<Millimetres, Failure> {
    let length =
        quantity::length(text, None).map_err(|fault| Failure::in_option(option, text, &fault))?;
    if length >= Millimetres::ZERO {
        return Ok(length);
    }
    let marked = Marked::typed(text).wrong(0..text.len(), "0 or more is expected");
    Err(Failure::new(Kind::Usage, format!("the value of {option} cannot be used")).marking(marked))
}
