//! `verify`: finished arrows by number.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `verify`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn verify dozen.journal\n  \
        quarterturn verify dozen.journal --eye-to-pin 85cm",
    after_help = "Enter the shots first, with field points, three of each arrow:\n  \
        quarterturn heads dozen.journal --distance 18m \"7 r3 u2, 9 l1 d4\""
)]
pub struct VerifyArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// From your eye to the pin at full draw: with it you are told how far to move the pin
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub eye_to_pin: Option<String>,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
