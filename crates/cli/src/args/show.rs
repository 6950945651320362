//! `show`: how every shaft stands.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `show`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
        quarterturn show dozen.journal\n  \
        quarterturn show dozen.journal --json")]
pub struct ShowArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
