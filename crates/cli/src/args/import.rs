//! `import`: ends from a table or from an export.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `import`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn import dozen.journal ends.csv --dry-run\n  \
        quarterturn import copy.journal dozen.json",
    after_help = "A table has named columns, parted by commas, semicolons or tabs: shaft, x_mm (or x_cm, x_in), \
        y_mm and the others of docs/import-export.md. What stands in the journal already is passed \
        over, so that the same file adds nothing a second time."
)]
pub struct ImportArgs {
    /// The journal; an export of a whole journal may begin a new one
    pub journal: PathBuf,

    /// A table of shots or of workshop measures (CSV), a JSON export, or - for standard input
    pub file: PathBuf,

    /// Say what would be added, and add nothing
    #[arg(long)]
    pub dry_run: bool,

    /// Answer as JSON: how much was added
    #[arg(long)]
    pub json: bool,
}
