//! `redo`: bring back what was taken back last.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `redo`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
        quarterturn redo dozen.journal\n  \
        quarterturn redo dozen.journal --json")]
pub struct RedoArgs {
    /// The journal
    pub journal: PathBuf,

    /// Answer as JSON: what was brought back
    #[arg(long)]
    pub json: bool,
}
