//! `log`: what was entered, changed and taken back.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `log`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
        quarterturn log dozen.journal\n  \
        quarterturn log dozen.journal --json")]
pub struct LogArgs {
    /// The journal
    pub journal: PathBuf,

    /// Answer as JSON: every record, with what became of it
    #[arg(long)]
    pub json: bool,
}
