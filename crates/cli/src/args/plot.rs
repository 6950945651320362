//! `plot`: a picture of the target.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `plot`.
#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  \
        quarterturn plot dozen.journal\n  \
        quarterturn plot dozen.journal -o target.svg --force\n  \
        quarterturn plot dozen.journal --shaft 7")]
pub struct PlotArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// One shaft all round the clock instead of the whole target
    #[arg(long, value_name = "SHAFT")]
    pub shaft: Option<String>,

    /// The picture to write, or - for standard output [default: beside the journal, ending in .svg]
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,

    /// Write over a picture that exists
    #[arg(long)]
    pub force: bool,
}
