//! `fix`: put an earlier end right.

use std::path::PathBuf;

use clap::{ArgGroup, Args};

use super::whole_number::whole_number;

/// What can be typed after `fix`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn fix <JOURNAL> <END> <LINE>\n       \
        quarterturn fix <JOURNAL> <END> --exchange <SHAFT,SHAFT>",
    before_help = "Examples:\n  \
        quarterturn fix dozen.journal 6 7 r31 u8\n  \
        quarterturn fix dozen.journal 6 --exchange 4,11",
    after_help = "What is said of an arrow anew takes the place of what was said of the same: its hit, its tail, \
        its mark, its call, its flags; what is not said stays. The end as it was entered stays in the \
        journal, and `undo` takes the correction back.",
    group(ArgGroup::new("correction").required(true).args(["line", "exchange"]))
)]
pub struct FixArgs {
    /// The journal
    pub journal: PathBuf,

    /// The end, counted from 1 over all evenings, as its echo and `log` say
    #[arg(value_parser = whole_number::<usize>)]
    pub end: usize,

    /// The arrows as they should have been entered, for example "7 r31 u8, 9 p"
    pub line: Vec<String>,

    /// Two arrows that were written for each other
    #[arg(long, value_name = "SHAFT,SHAFT")]
    pub exchange: Option<String>,

    /// Answer as JSON: what was recorded
    #[arg(long)]
    pub json: bool,
}
