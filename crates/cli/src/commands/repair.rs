//! `repair`: mends a damaged journal.

use quarterturn_journal::Repair;

use crate::answer::Answer;
use crate::args::RepairArgs;
use crate::failure::Failure;
use crate::{clock, json, screens};

/// Mends the journal, or only says what that would do.
pub fn run(args: &RepairArgs) -> Result<Answer, Failure> {
    let stamp = clock::stamp()?;
    let carry_out = if args.dry_run { Repair::plan } else { Repair::carry_out };
    let repair = carry_out(&args.journal, &stamp)?;
    let text = if args.json {
        json::repaired(&repair, args.dry_run)?
    } else {
        screens::repaired(&args.journal, &repair, args.dry_run)
    };
    Ok(Answer::new(text))
}
