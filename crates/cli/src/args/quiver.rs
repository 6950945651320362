//! `quiver`: the quiver and its season.

use std::path::PathBuf;

use clap::Args;

const EXAMPLES: &str = "Examples:
  quarterturn quiver dozen.journal
  quarterturn quiver dozen.journal --order 12,10
  quarterturn quiver dozen.journal 12 --carries C --head-mass 103.1gr
  quarterturn quiver dozen.journal --read-on 2027-07-30 --least-mass 300gr";

const AFTER_HELP: &str = "What happens to an arrow is recorded with shaft: --checked, --hard-hit, --new-nock; a new string with bow: \
    --note \"new string\" --part string. The program knows no law: you enter what you have read, and when, and it \
    compares.";

/// What can be typed after `quiver`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn quiver <JOURNAL> [--json]\n       \
        quarterturn quiver <JOURNAL> --order <NAMES>\n       \
        quarterturn quiver <JOURNAL> <ARROW> --carries <NAME> [--head-mass <MASS>] [--runout <LENGTH>] [--width <LENGTH>]\n       \
        quarterturn quiver <JOURNAL> --read-on <DATE> [--least-mass <MASS>] [--least-draw <WEIGHT>] [--least-width <LENGTH>] [--draw <WEIGHT>]",
    before_help = EXAMPLES,
    after_help = AFTER_HELP
)]
pub struct QuiverArgs {
    /// The journal
    pub journal: PathBuf,

    /// The arrow that a head was put on
    #[arg(requires = "carries", conflicts_with_all = ["order", "read_on"])]
    pub arrow: Option<String>,

    /// Which arrow is shot first, second and so on: 2,9,4
    #[arg(long, value_name = "NAMES", conflicts_with = "read_on")]
    pub order: Option<String>,

    /// The head's own name, as it is scratched into it
    #[arg(long, value_name = "NAME", requires = "arrow")]
    pub carries: Option<String>,

    /// What that head weighs: 103.1gr
    #[arg(long, value_name = "MASS", requires = "carries", allow_hyphen_values = true)]
    pub head_mass: Option<String>,

    /// How far its tip swings in one turn on this arrow: 0.5mm
    #[arg(long, value_name = "LENGTH", requires = "carries", allow_hyphen_values = true)]
    pub runout: Option<String>,

    /// How wide it cuts: 27mm
    #[arg(long, value_name = "LENGTH", requires = "carries", allow_hyphen_values = true)]
    pub width: Option<String>,

    /// The day on which you read the limits that follow: 2027-07-30
    #[arg(long, value_name = "DATE")]
    pub read_on: Option<String>,

    /// The least mass of an arrow that you must keep to: 300gr
    #[arg(long, value_name = "MASS", requires = "read_on", allow_hyphen_values = true)]
    pub least_mass: Option<String>,

    /// The least draw weight: 40lb
    #[arg(long, value_name = "WEIGHT", requires = "read_on", allow_hyphen_values = true)]
    pub least_draw: Option<String>,

    /// The least width that a broadhead cuts: 22mm
    #[arg(long, value_name = "LENGTH", requires = "read_on", allow_hyphen_values = true)]
    pub least_width: Option<String>,

    /// What your bow draws: 60lb
    #[arg(long, value_name = "WEIGHT", requires = "read_on", allow_hyphen_values = true)]
    pub draw: Option<String>,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
