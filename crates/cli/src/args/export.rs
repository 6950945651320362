//! `export`: everything, for other programs.

use std::path::PathBuf;

use clap::{ArgGroup, Args};

/// What can be typed after `export`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn export dozen.journal --csv -o dozen.csv\n  \
        quarterturn export dozen.journal --json",
    group(ArgGroup::new("form").required(true).args(["csv", "json"]))
)]
pub struct ExportArgs {
    /// The journal
    pub journal: PathBuf,

    /// As a table, one shot a line
    #[arg(long)]
    pub csv: bool,

    /// As JSON
    #[arg(long)]
    pub json: bool,

    /// Where to write it [default: standard output]
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,

    /// Replace the file if it is there already
    #[arg(long)]
    pub force: bool,
}
