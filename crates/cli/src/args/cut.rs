//! `cut`: how much comes off which end of every shaft.

use std::path::PathBuf;

use clap::Args;

/// What can be typed after `cut`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn cut dozen.journal --to 724mm --kerf 1.2mm\n  \
        quarterturn cut dozen.journal --to 28.5in --kerf 0.05in --squaring 0.02in",
    after_help = "Lengths are those of `bench --length`, from the groove of the nock to the end of the shaft. Which end is told \
        by `bench --straight-point` and `--straight-nock`: all off the more crooked one, else something off both. \
        Record what came off with `bench --cut-point` and `--cut-nock`, and the new `--length`."
)]
pub struct CutArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// How long the shafts are to be: 724mm, 28.5in
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub to: String,

    /// How wide your saw cuts
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub kerf: String,

    /// What is left on for squaring an end that was cut
    #[arg(long, value_name = "LENGTH", default_value = "0.3mm", allow_hyphen_values = true)]
    pub squaring: String,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
