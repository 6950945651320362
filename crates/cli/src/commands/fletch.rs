//! `fletch`: where the vanes go on every kept shaft.

use crate::answer::Answer;
use crate::args::FletchArgs;
use crate::failure::Failure;
use crate::fletching::{Fletching, VanesAsked};
use crate::opened::Opened;
use crate::{json, screens};

/// Shows where the vanes go; the journal is only read.
pub fn run(args: &FletchArgs) -> Result<Answer, Failure> {
    let asked = VanesAsked::read(&args.vanes)?;
    let opened = Opened::at(&args.journal)?;
    let advice = opened.advice();
    let fletching = Fletching::of(&advice, asked);
    let text = if args.json {
        json::fletch(&opened, &fletching)?
    } else {
        screens::fletch(&opened, &fletching)
    };
    Ok(Answer::new(text).noticing(opened.notices()))
}
