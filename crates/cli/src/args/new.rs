//! `new`: begin a journal.

use std::path::PathBuf;

use clap::Args;
use quarterturn_journal::FaceUnit;
use quarterturn_tuning::{Matching, Policy};

use super::positions_value::positions;
use super::whole_number::whole_number;
use super::word_value::word;

/// What can be typed after `new`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn new <JOURNAL> --shafts <LIST> --reference <LIST>\n                       \
        --distance <LENGTH> --tolerance <LENGTH> [OPTIONS]",
    before_help = "Examples:\n  \
        quarterturn new dozen.journal --shafts 1-12 --reference R \\\n      --distance 18.3m --tolerance 25mm\n  \
        quarterturn new old.journal --shafts 1,2,5-8,A --reference R,S \\\n      \
        --distance 20yd --tolerance 1in --units in --index 1=30,7=180"
)]
pub struct NewArgs {
    /// The file to begin; it must not exist yet
    pub journal: PathBuf,

    /// The bare shafts by the numbers or names painted on them: 1-12 or 1,2,5-8,A
    #[arg(long, value_name = "LIST")]
    pub shafts: String,

    /// The fletched arrow that is trusted, or several: R or R,S
    #[arg(long, value_name = "LIST")]
    pub reference: String,

    /// From you to the face, with its unit: 18.3m, 20yd
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub distance: String,

    /// How far a shaft may land from what it is to match: 25mm, 1in
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub tolerance: String,

    /// The unit you read the face in and are answered in [default: mm]
    #[arg(long, value_name = "UNIT", value_parser = word::<FaceUnit>())]
    pub units: Option<FaceUnit>,

    /// Where marks stand now, in degrees clockwise from 12 o'clock: 1=30,7=180 [default: all at 0]
    #[arg(long, value_name = "LIST")]
    pub index: Option<String>,

    /// What the shafts are to match: the reference; or as a set each other, wherever that is, with the
    /// move of the bow or the sight said at the end [default: reference]
    #[arg(long, value_name = "AIM", value_parser = word::<Matching>())]
    pub aim: Option<Matching>,

    /// How many arrows you shoot before walking up, references included
    #[arg(long, value_name = "COUNT", default_value_t = 4, value_parser = whole_number::<usize>)]
    pub arrows_per_end: usize,

    /// How many bare shots are enough for one evening
    #[arg(long, value_name = "COUNT", default_value_t = Policy::default().evening_shots,
        value_parser = whole_number::<usize>)]
    pub shots_per_evening: usize,

    /// How many turns one of your nocks bears; common practice for push-in nocks
    #[arg(long, value_name = "COUNT", default_value_t = Policy::default().nock_turns,
        value_parser = whole_number::<usize>)]
    pub turns_per_nock: usize,

    /// How many evenly spaced places a mark may take, the first at 12 o'clock: 12 are the hours, any
    /// is every 5 degrees; 3 are the thirds from where each mark stands now, for arrows that carry
    /// three vanes already
    #[arg(long, value_name = "COUNT|any", default_value = "12", value_parser = positions)]
    pub positions: u16,

    /// How much lighter a bare shaft is than the reference, where the vanes' mass was not made up: 20gr
    #[arg(long, value_name = "MASS", allow_hyphen_values = true)]
    pub bare_lighter: Option<String>,

    /// The mass of the fletched arrow, used only with --bare-lighter [default: 400gr, common practice
    /// for a compound bow]
    #[arg(long, value_name = "MASS", requires = "bare_lighter", allow_hyphen_values = true)]
    pub arrow_mass: Option<String>,

    /// The speed of the fletched arrow, used only with --bare-lighter [default: 82m/s, common practice
    /// for a compound bow]
    #[arg(long, value_name = "SPEED", requires = "bare_lighter", allow_hyphen_values = true)]
    pub arrow_speed: Option<String>,

    /// The bow, in your own words
    #[arg(long, value_name = "TEXT")]
    pub bow: Option<String>,

    /// Release aid, tab or glove, in your own words
    #[arg(long, value_name = "TEXT")]
    pub release: Option<String>,

    /// The hand that draws, in your own words
    #[arg(long, value_name = "TEXT")]
    pub hand: Option<String>,

    /// Answer as JSON: what was recorded
    #[arg(long)]
    pub json: bool,
}
