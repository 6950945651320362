//! `config`: what is set, and where.

use clap::Args;

/// What can be typed after `config`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn config\n  \
        QUARTERTURN_NEW_DISTANCE=20yd quarterturn config --json",
    after_help = "Options that you would say the same way each time can stand in a file quarterturn.toml, in this folder \
        or in your own folder of settings:\n\n  \
        [new]\n  distance = \"20yd\"\n  tolerance = \"1in\"\n\n  [paper]\n  paper = \"letter\"\n\n\
        What is typed comes before a variable like QUARTERTURN_NEW_DISTANCE, that before the file of this folder, and \
        that before your own. What was settled when a journal was begun stays as it was."
)]
pub struct ConfigArgs {
    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
