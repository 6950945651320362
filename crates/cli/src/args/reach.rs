//! `reach`: from how far a plate is still hit.

use std::path::PathBuf;

use clap::Args;
use quarterturn_statistics::Level;

/// How wide a plate is where nobody says it.
pub const USUAL_PLATE: &str = "20cm";

/// What can be typed after `reach`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn reach dozen.journal\n  \
        quarterturn reach dozen.journal --plate 6in --chance 0.95",
    after_help = "It rests on the groups that were entered with heads, and is an upper bound for practice."
)]
pub struct ReachArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// How wide the plate is; 20 cm (8 in) is often taught, and other sizes are too
    #[arg(long, value_name = "LENGTH", default_value = USUAL_PLATE, allow_hyphen_values = true)]
    pub plate: String,

    /// With which chance each arrow is to land on it
    #[arg(long, value_name = "CHANCE", default_value = "0.9", value_parser = chance, allow_hyphen_values = true)]
    pub chance: Level,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}

fn chance(text: &str) -> Result<Level, String> {
    let number: f64 = text.parse().map_err(|_| "a number was expected, for example 0.9")?;
    Level::new(number).map_err(|error| error.to_string())
}
