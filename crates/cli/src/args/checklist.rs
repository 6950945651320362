//! `checklist`: every stage from raw shaft to quiver, and what is still missing.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `checklist`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn checklist dozen.journal\n  \
        quarterturn checklist dozen.journal --json",
    after_help = "A stage that you cannot measure you may pass by: nothing that the program advises rests on the bench. What no \
        journal can know, such as the flex test, is marked \"by hand\"."
)]
pub struct ChecklistArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
