//! `report`: the whole dozen on one page.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `report`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
        quarterturn report dozen.journal\n  \
        quarterturn report dozen.journal -o dozen.html --force")]
pub struct ReportArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// The page to write, or - for standard output [default: beside the journal, ending in .html]
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,

    /// Write over a page that exists
    #[arg(long)]
    pub force: bool,

    /// Answer as JSON: the files that were written
    #[arg(long)]
    pub json: bool,
}
