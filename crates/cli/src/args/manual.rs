//! `manual`: pages for `man`.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `manual`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
    quarterturn manual man1\n  \
    quarterturn manual pages && ls pages")]
pub struct ManualArgs {
    /// A folder to make, for one page a command
    pub folder: PathBuf,

    /// Answer as JSON: the files that were written
    #[arg(long)]
    pub json: bool,
}
