//! `repair`: mend a damaged journal.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `repair`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn repair dozen.journal --dry-run\n  \
        quarterturn repair dozen.journal",
    after_help = "Every record that can be read is kept with its number; in the place of one that cannot stands an entry that says so. The journal as it was is kept beside it."
)]
pub struct RepairArgs {
    /// The journal
    pub journal: PathBuf,

    /// Only say what would be done
    #[arg(long)]
    pub dry_run: bool,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
