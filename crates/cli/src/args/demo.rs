//! `demo`: a whole tuning with an invented dozen.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `demo`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
        quarterturn demo\n  \
        quarterturn demo my-first-dozen")]
pub struct DemoArgs {
    /// The folder to make; it must not exist yet
    #[arg(default_value = "quarterturn-demo")]
    pub folder: PathBuf,

    /// Answer as JSON: the files that were written
    #[arg(long)]
    pub json: bool,
}
