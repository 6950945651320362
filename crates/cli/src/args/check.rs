//! `check`: whether a journal is whole.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `check`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn check dozen.journal\n  \
        quarterturn check dozen.journal --json",
    after_help = "A journal that is not whole ends this with the exit code 3, after everything that was found."
)]
pub struct CheckArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
