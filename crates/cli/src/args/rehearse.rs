//! `rehearse`: what a dozen will take, before a shot is shot.

use clap::Args;
use quarterturn_journal::FaceUnit;

use super::whole_number::{whole_number, within};
use super::word_value::word;

/// What can be typed after `rehearse`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn rehearse --group <LENGTH> --distance <LENGTH> --tolerance <LENGTH> [OPTIONS]",
    before_help = "Examples:\n  \
        quarterturn rehearse --group 80mm --distance 18.3m --tolerance 25mm\n  \
        quarterturn rehearse --group 3in --distance 20yd --tolerance 1in --units in \\\n      \
        --shafts 6 --arrows-per-end 6 --no-leans",
    after_help = "To measure your group: shoot twenty fletched arrows over several ends, one arrow to a spot. Draw the smallest circle round the middle that leaves out two of them."
)]
pub struct RehearseArgs {
    /// Your own group with fletched arrows at this distance: how wide the circle is that holds nine out of ten of them
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub group: String,

    /// From you to the face, with its unit: 18.3m, 20yd
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub distance: String,

    /// How far from the reference a shaft may land: 25mm, 1in
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub tolerance: String,

    /// The unit you are answered in [default: mm]
    #[arg(long, value_name = "UNIT", value_parser = word::<FaceUnit>())]
    pub units: Option<FaceUnit>,

    /// How many bare shafts
    #[arg(long, value_name = "COUNT", default_value_t = 12, value_parser = within(1_u16..=60))]
    pub shafts: u16,

    /// How many arrows you shoot before walking up, the reference included
    #[arg(long, value_name = "COUNT", default_value_t = 4, value_parser = within(2_u16..=60))]
    pub arrows_per_end: u16,

    /// You do not read how your arrows lean
    #[arg(long)]
    pub no_leans: bool,

    /// How many dozens to invent; more take longer and say it more closely
    #[arg(long, value_name = "COUNT", default_value_t = 40, value_parser = within(20_u16..=5000))]
    pub dozens: u16,

    /// Another seed invents other dozens
    #[arg(long, default_value_t = 1, value_parser = whole_number::<u32>)]
    pub seed: u32,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
