//! `glue`: what was glued, and from when it may be shot.

use std::path::PathBuf;

use clap::Args;
use quarterturn_journal::GluedPart;

use super::word_value::word;

/// What can be typed after `glue`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn glue <JOURNAL> <SHAFTS> --cure <TIME> [OPTIONS]\n       \
        quarterturn glue <JOURNAL> [--json]",
    before_help = "Examples:\n  \
        quarterturn glue dozen.journal 1-12 --cure 24h\n  \
        quarterturn glue dozen.journal 3,7 --part vanes --cure 30min",
    after_help = "How long a glue cures is its maker's word: the program knows no glue. Of a part that is glued again the last \
        time counts."
)]
pub struct GlueArgs {
    /// The journal
    pub journal: PathBuf,

    /// The shafts or references that were glued: 1-12 or 1,2,R; left out: show what was glued
    #[arg(requires = "cure")]
    pub shafts: Option<String>,

    /// How long it cures before it may be shot, by the maker of the glue: 24h, 30min, 2d
    #[arg(long, value_name = "TIME", requires = "shafts", allow_hyphen_values = true)]
    pub cure: Option<String>,

    /// What was glued on
    #[arg(long, value_name = "PART", requires = "shafts", default_value = "insert", value_parser = word::<GluedPart>())]
    pub part: GluedPart,

    /// When, with its date and zone [default: now]
    #[arg(long, value_name = "TIME", requires = "shafts")]
    pub at: Option<String>,

    /// Answer as JSON: what was recorded, or all that was glued
    #[arg(long)]
    pub json: bool,
}
