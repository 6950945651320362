//! `heads`: broadheads against field points.

use std::path::PathBuf;

use clap::Args;

const EXAMPLES: &str = "Examples:
  quarterturn heads dozen.journal 12 r3 u2 --distance 20yd --head A
  quarterturn heads dozen.journal --together 50mm";

const AFTER_HELP: &str = "Only arrows that are recorded as fletched are entered: shaft JOURNAL NAME --fletched. The line is that of `end`, \
    each arrow once and measured from its own spot; every round is a group of its own. Without --head the arrows carry \
    field points. Never a broadhead on a bare shaft.";

/// What can be typed after `heads`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn heads <JOURNAL> <LINE> [--distance <LENGTH>] [--head <NAME>] [--cold] [--json]\n       \
        quarterturn heads <JOURNAL> --json <FILE>\n       \
        quarterturn heads <JOURNAL> [--together <LENGTH>] [--json]",
    before_help = EXAMPLES,
    after_help = AFTER_HELP
)]
pub struct HeadsArgs {
    /// The journal
    pub journal: PathBuf,

    /// A group of finished arrows to record, with or without quotes: 7 r3 u2, 9 l1 d4; left out, you are
    /// shown where broadheads land
    pub line: Vec<String>,

    /// From you to the face [default: the journal's]
    #[arg(long, value_name = "LENGTH", requires = "line", allow_hyphen_values = true)]
    pub distance: Option<String>,

    /// What the arrows carry: field, or your own name for a broadhead
    #[arg(long, value_name = "NAME", requires = "line", default_value = "field")]
    pub head: String,

    /// It was the first shot of the day, before any other: one arrow
    #[arg(long, requires = "line")]
    pub cold: bool,

    /// How near each other two centres must be for you to call them together: 50mm, 2in
    #[arg(long, value_name = "LENGTH", conflicts_with = "line", allow_hyphen_values = true)]
    pub together: Option<String>,

    /// Answer as JSON; with a file behind it, or - for standard input, read the group from there
    #[arg(long, value_name = "FILE", num_args = 0..=1)]
    pub json: Option<Vec<PathBuf>>,
}
