//! `explain`: what a word or a number means.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `explain`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
    quarterturn explain\n  \
    quarterturn explain inside\n  \
    quarterturn explain centre off --journal dozen.journal")]
pub struct ExplainArgs {
    /// The word as a screen shows it; left out, every word is listed
    pub word: Vec<String>,

    /// Say what the number rests on in this journal; it is only read
    #[arg(long, value_name = "JOURNAL", requires = "word")]
    pub journal: Option<PathBuf>,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
