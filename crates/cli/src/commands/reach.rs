//! `reach`: from how far a plate is still hit.

use quarterturn_tuning::reach;

use super::heads::length;
use crate::answer::Answer;
use crate::args::ReachArgs;
use crate::failure::Failure;
use crate::opened::Opened;
use crate::{json, screens};

/// One seed for every journal: asked twice, the answer is the same.
pub const SEED: u64 = 1;

/// Shows the chance on a plate against the distance; the journal is only read.
pub fn run(args: &ReachArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let plate = length("--plate", &args.plate, Some(opened.ruler().unit()))?;
    let groups: Vec<_> = opened.journal.state().groups_beside_this_bow().collect();
    let reach = reach(&groups, plate, args.chance, SEED);
    let text = if args.json {
        json::reach(&opened, &reach, plate, args.chance)?
    } else {
        screens::reach(&opened, &reach, plate, args.chance)
    };
    Ok(Answer::new(text).noticing(opened.notices()))
}
