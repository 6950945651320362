//! `practice`: the whole job on an invented dozen, an end at a time.

use std::path::PathBuf;

use clap::Args;

use super::whole_number::whole_number;

/// What can be typed after `practice`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn practice trial.journal\n  \
        quarterturn practice trial.journal --seed 7 --no-input",
    after_help = "The archer, his bow and his shafts are invented, and he shoots what you are told to shoot. At the end you see the truth that he could not see."
)]
pub struct PracticeArgs {
    /// The journal to begin; it must not exist yet
    pub journal: PathBuf,

    /// Which archer and shafts to invent [default: by chance, and said]
    #[arg(long, value_parser = whole_number::<u32>)]
    pub seed: Option<u32>,

    /// Run through without waiting for Enter
    #[arg(long)]
    pub no_input: bool,
}
