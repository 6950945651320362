//! `fletch`: where the vanes go on every kept shaft.

use quarterturn_bench::Vanes;
use quarterturn_geometry::Index;

use crate::answer::Answer;
use crate::args::FletchArgs;
use crate::failure::Failure;
use crate::fletching::Fletching;
use crate::opened::Opened;
use crate::{json, screens};

/// Shows where the vanes go; the journal is only read.
pub fn run(args: &FletchArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let vanes = if args.vanes == Vanes::Four.count() { Vanes::Four } else { Vanes::Three };
    let cock = Index::from_hour(f64::from(args.cock));
    let advice = opened.advice();
    let fletching = Fletching::of(&advice, vanes, cock);
    let text = if args.json {
        json::fletch(&opened, &fletching)?
    } else {
        screens::fletch(&opened, &fletching)
    };
    Ok(Answer::new(text).noticing(opened.notices()))
}
