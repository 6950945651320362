//! `next`: what to do now.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `next`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
        quarterturn next dozen.journal\n  \
        quarterturn next dozen.journal --json")]
pub struct NextArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
