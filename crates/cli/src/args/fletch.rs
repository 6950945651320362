//! `fletch`: where the vanes go on every kept shaft.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `fletch`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn fletch dozen.journal\n  \
        quarterturn fletch dozen.journal --cock 9 --vanes 4",
    after_help = "12, cock vane up, suits most drop-away and full-capture rests; away from the bow, 9 for a right-handed \
        bow and 3 for a left-handed one, suits a rest at its side (common practice)."
)]
pub struct FletchArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// Where the cock vane is to stand on the string, by the clock, seen from behind
    #[arg(long, value_name = "HOUR", default_value_t = 12,
          value_parser = clap::value_parser!(u8).range(1..=12))]
    pub cock: u8,

    /// How many vanes, 3 or 4
    #[arg(long, value_name = "COUNT", default_value_t = 3,
          value_parser = clap::value_parser!(u8).range(3..=4))]
    pub vanes: u8,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
