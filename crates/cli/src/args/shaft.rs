//! `shaft`: what became of a shaft.

use std::path::PathBuf;

use clap::Args;
use quarterturn_tuning::ShaftChange;

/// What can be typed after `shaft`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn shaft <JOURNAL> <NAME> <CHANGE>",
    after_help = "Examples:\n  \
        quarterturn shaft dozen.journal 4 --broken\n  \
        quarterturn shaft dozen.journal 4 --repaired"
)]
pub struct ShaftArgs {
    /// The journal
    pub journal: PathBuf,

    /// The shaft or reference
    pub name: String,

    /// What became of it
    #[command(flatten)]
    pub state: ShaftState,

    /// Answer as JSON: what was recorded
    #[arg(long)]
    pub json: bool,
}

/// What became of a shaft: exactly one of these.
#[derive(Args, Debug)]
#[group(required = true, multiple = false)]
#[expect(clippy::struct_excessive_bools, reason = "the flags as they are typed")]
pub struct ShaftState {
    /// It was not found
    #[arg(long)]
    pub lost: bool,

    /// It broke, or was found damaged
    #[arg(long)]
    pub broken: bool,

    /// It was mended, or replaced under the same name: it starts anew
    #[arg(long)]
    pub repaired: bool,

    /// It is laid by
    #[arg(long)]
    pub set_aside: bool,

    /// It is taken up again
    #[arg(long)]
    pub readmit: bool,

    /// It was fletched
    #[arg(long)]
    pub fletched: bool,
}

impl ShaftState {
    /// The one that was said.
    pub fn change(&self) -> ShaftChange {
        let said = [
            (self.lost, ShaftChange::Lost),
            (self.broken, ShaftChange::Broken),
            (self.repaired, ShaftChange::Repaired),
            (self.set_aside, ShaftChange::SetAside),
            (self.readmit, ShaftChange::Readmit),
            (self.fletched, ShaftChange::Fletched),
        ];
        // Exactly one was said, so the way out is never taken.
        said.into_iter().find(|(said, _)| *said).map_or(ShaftChange::Fletched, |(_, change)| change)
    }
}
