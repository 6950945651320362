//! `shaft`: what became of a shaft.

use std::path::PathBuf;

use clap::Args;
use quarterturn_tuning::ShaftChange;

/// What can be typed after `shaft`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn shaft <JOURNAL> <NAME> <CHANGE> [--on <DATE>]\n       \
        quarterturn shaft <JOURNAL> <NAME> --fletched [--index <ANGLE>]\n       \
        quarterturn shaft <JOURNAL> <NAME> --add [--index <ANGLE>|--reference]",
    before_help = "Examples:\n  \
        quarterturn shaft dozen.journal 4 --broken\n  \
        quarterturn shaft dozen.journal 13 --add --index 90"
)]
pub struct ShaftArgs {
    /// The journal
    pub journal: PathBuf,

    /// The shaft or reference
    pub name: String,

    /// What became of it
    #[command(flatten)]
    pub state: ShaftState,

    /// Where the mark of an added or a fletched shaft stands, in degrees clockwise from 12 o'clock [default: 0;
    /// of a fletched one where `fletch` said]
    #[arg(long, value_name = "ANGLE", requires = "marked", allow_hyphen_values = true)]
    pub index: Option<String>,

    /// What is added is a fletched reference, not a bare shaft
    #[arg(long, requires = "add", conflicts_with = "index")]
    pub reference: bool,

    /// The day on which it happened, where that is not today: 2027-09-01
    #[arg(long, value_name = "DATE", conflicts_with = "add")]
    pub on: Option<String>,

    /// Answer as JSON: what was recorded
    #[arg(long)]
    pub json: bool,
}

/// What became of a shaft: exactly one of these.
#[derive(Args, Debug)]
#[group(required = true, multiple = false)]
#[expect(clippy::struct_excessive_bools, reason = "the flags as they are typed")]
pub struct ShaftState {
    /// It joins: a shaft that is shot from now on
    #[arg(long, group = "marked")]
    pub add: bool,

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

    /// It was fletched, with its mark where `fletch` said
    #[arg(long, group = "marked")]
    pub fletched: bool,

    /// It was flexed, spun and looked at, and is sound
    #[arg(long)]
    pub checked: bool,

    /// It hit something hard
    #[arg(long)]
    pub hard_hit: bool,

    /// It has a new nock
    #[arg(long)]
    pub new_nock: bool,
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
            (self.checked, ShaftChange::Checked),
            (self.hard_hit, ShaftChange::HardHit),
            (self.new_nock, ShaftChange::NewNock),
        ];
        // Exactly one was said, so the way out is never taken.
        said.into_iter().find(|(said, _)| *said).map_or(ShaftChange::Fletched, |(_, change)| change)
    }
}
