//! `undo`: take back the last entry.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `undo`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
        quarterturn undo dozen.journal\n  \
        quarterturn undo dozen.journal --json")]
pub struct UndoArgs {
    /// The journal
    pub journal: PathBuf,

    /// Answer as JSON: what was taken back
    #[arg(long)]
    pub json: bool,
}
