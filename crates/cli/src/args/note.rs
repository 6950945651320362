//! `note`: something worth remembering.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `note`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
        quarterturn note dozen.journal \"new string served\"\n  \
        quarterturn note dozen.journal \"light goes at half past four\" --json")]
pub struct NoteArgs {
    /// The journal
    pub journal: PathBuf,

    /// The note, in your own words
    pub text: String,

    /// Answer as JSON: what was recorded
    #[arg(long)]
    pub json: bool,
}
