//! `bench`: what was measured in the workshop, and what the set looks like.

use std::path::PathBuf;

use clap::Args;
use quarterturn_bench::SpineStandard;
use quarterturn_journal::MOST_SHAFTS;

use super::whole_number::within;
use super::word_value::word;

/// What can be typed after `bench`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn bench <JOURNAL> <SHAFT> <MEASURES>\n       \
        quarterturn bench <JOURNAL> [--best <COUNT>] [OPTIONS]",
    before_help = "Examples:\n  \
        quarterturn bench dozen.journal 7 --mass 312.4gr --straight 0.08mm \\\n      \
        --spine 0=0.500,90=0.512,180=0.501,270=0.510\n  \
        quarterturn bench dozen.journal --best 6 --draw 60lb --least-per-pound 6",
    after_help = "Sides are degrees clockwise from the ink mark, seen from the nock. Of a measure that is entered twice \
        the last one counts.\n\
        Straightness and wobble are the whole swing of a gauge in one turn, in the middle on supports 28 in apart. Spine is measured on supports 28 in \
        apart with 1.94 lb (880 g) in the middle; the side you name faces up."
)]
pub struct BenchArgs {
    /// The journal
    pub journal: PathBuf,

    /// The shaft or reference that was measured; left out: show the set
    pub shaft: Option<String>,

    /// What was measured
    #[command(flatten)]
    pub measured: MeasuredArgs,

    /// What is asked of the set
    #[command(flatten)]
    pub asked: SetArgs,

    /// Answer as JSON: what was recorded, or the set
    #[arg(long)]
    pub json: bool,
}

/// The measures of one shaft.
#[derive(Args, Debug)]
#[group(id = "measures", multiple = true, requires = "shaft", conflicts_with = "asked")]
pub struct MeasuredArgs {
    /// Mass of the raw shaft: 312.4gr
    #[arg(long, value_name = "MASS", allow_hyphen_values = true)]
    pub mass: Option<String>,

    /// From the groove of the nock to the end of the shaft, point left out: 724mm
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub length: Option<String>,

    /// Straightness in the middle: 0.08mm
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub straight: Option<String>,

    /// Straightness at the end for the point
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub straight_point: Option<String>,

    /// Straightness at the end for the nock
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub straight_nock: Option<String>,

    /// How much was cut off at the end for the point: 12mm
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub cut_point: Option<String>,

    /// How much was cut off at the end for the nock
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub cut_nock: Option<String>,

    /// How far it sags with which side up, in inches where no unit is given: 0=0.500,90=0.512
    #[arg(long, value_name = "LIST", allow_hyphen_values = true)]
    pub spine: Option<String>,

    /// The span it was read by: 28in with 1.94 lb, or 26in with 2 lb [default: 28in]
    #[arg(long, value_name = "SPAN", requires = "spine", value_parser = word::<SpineStandard>())]
    pub spine_standard: Option<SpineStandard>,

    /// The stiff side
    #[arg(long, value_name = "ANGLE", allow_hyphen_values = true)]
    pub stiff_side: Option<String>,

    /// The heavy side
    #[arg(long, value_name = "ANGLE", allow_hyphen_values = true)]
    pub heavy_side: Option<String>,

    /// Toward which side the crooked end stands off
    #[arg(long, value_name = "ANGLE", allow_hyphen_values = true)]
    pub crooked_side: Option<String>,

    /// How far the end for the insert is out of square, across its diameter: 0.1mm
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub square: Option<String>,

    /// Wobble at the tip of a point: 0.2mm
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub wobble: Option<String>,

    /// Mass of the bare arrow as it is shot, with insert, point and nock: 408gr
    #[arg(long, value_name = "MASS", allow_hyphen_values = true)]
    pub bare_mass: Option<String>,

    /// Mass of the finished arrow: 428gr
    #[arg(long, value_name = "MASS", allow_hyphen_values = true)]
    pub finished_mass: Option<String>,

    /// From the groove of the nock to the balance point of the finished arrow: 452mm
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub balance: Option<String>,
}

/// What is asked of the set.
#[derive(Args, Debug)]
#[group(id = "asked", multiple = true)]
pub struct SetArgs {
    /// Choose this many that go together best
    #[arg(long, value_name = "COUNT", value_parser = within(2..=MOST_SHAFTS))]
    pub best: Option<usize>,

    /// Speed of the finished arrow, for its energy and momentum: 270fps, 82m/s
    #[arg(long, value_name = "SPEED", allow_hyphen_values = true)]
    pub speed: Option<String>,

    /// Draw weight of the bow, for grains per pound: 60lb
    #[arg(long, value_name = "WEIGHT", allow_hyphen_values = true)]
    pub draw: Option<String>,

    /// The least grains per pound that your bow maker or your law allows: 6
    #[arg(long, value_name = "GRAINS", requires = "draw", allow_hyphen_values = true)]
    pub least_per_pound: Option<String>,

    /// Outer diameter of the shafts, for what a crooked end does: 6.2mm
    #[arg(long, value_name = "LENGTH", requires = "point_length", allow_hyphen_values = true)]
    pub diameter: Option<String>,

    /// From the end of the shaft to the tip of the point: 40mm
    #[arg(long, value_name = "LENGTH", requires = "diameter", allow_hyphen_values = true)]
    pub point_length: Option<String>,
}
