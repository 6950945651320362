//! `bow`: the bow was changed, or stays as it is.

use std::path::PathBuf;

use clap::builder::NonEmptyStringValueParser;
use clap::{ArgGroup, Args};
use quarterturn_tuning::BowPart;

use super::word_value::word;

/// What can be typed after `bow`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn bow <JOURNAL> --note <TEXT> [--part <PART>] [--move-mm <X,Y>]\n       \
        quarterturn bow <JOURNAL> --leave <TEXT>",
    before_help = "Examples:\n  \
        quarterturn bow dozen.journal --note \"rest in\" --part rest --move-mm -0.8,0\n  \
        quarterturn bow dozen.journal --leave \"good enough for this season\"",
    group(ArgGroup::new("change").required(true).args(["note", "leave"]))
)]
pub struct BowArgs {
    /// The journal
    pub journal: PathBuf,

    /// The bow was changed: what was done, in your own words
    #[arg(long, value_name = "TEXT", value_parser = NonEmptyStringValueParser::new())]
    pub note: Option<String>,

    /// The bow stays as it is, tonight or for good: why, in your own words
    #[arg(long, value_name = "TEXT", value_parser = NonEmptyStringValueParser::new())]
    pub leave: Option<String>,

    /// The part that was changed [default: other]
    #[arg(long, conflicts_with = "leave", value_parser = word::<BowPart>())]
    pub part: Option<BowPart>,

    /// By how much it was moved, right and up, in millimetres: -0.8,0
    #[arg(long, value_name = "X,Y", conflicts_with = "leave", allow_hyphen_values = true)]
    pub move_mm: Option<String>,

    /// Answer as JSON: what was recorded
    #[arg(long)]
    pub json: bool,
}
