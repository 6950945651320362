//! `fletch`: where the vanes go on every kept shaft.

use std::path::PathBuf;

use clap::Args;

use super::VanesArgs;

/// What can be typed after `fletch`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn fletch dozen.journal\n  \
        quarterturn fletch dozen.journal --rest side-right --vanes 4 --vane-angle left",
    after_help = "12, cock vane up, suits most drop-away and full-capture rests; away from the bow, 9 for a right-handed \
        bow and 3 for a left-handed one, suits a rest at its side (common practice).\n\
        To print: quarterturn paper fletch dozen.journal --diameter 6.5mm"
)]
pub struct FletchArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// The vanes.
    #[command(flatten)]
    pub vanes: VanesArgs,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
