//! `end`: enter an end.

use std::path::PathBuf;

use clap::{ArgGroup, Args};

const EXAMPLES: &str = "Examples:
  quarterturn end dozen.journal
  quarterturn end dozen.journal R r3 d12, 7 i3 r31 u8 tl2.5, 9 l4 p
  quarterturn end dozen.journal --file evening.txt
  quarterturn end dozen.journal --json end.json";

const THE_LINE: &str =
    "The line: one arrow a group, its name first; commas or line ends between groups.
  r31 u8   31 right and 8 up (l left, d down), in the journal's unit or with one;
           words may run together: r31u8tl2
  2h8      8 toward 2 o'clock
  0        dead on the spot
  tl2.5    tail 2.5 degrees left (tr right, tu high, td low); t10h2 toward 10 o'clock
  tl2cm    tail 2 cm left by tape; s62cm: the arrows stick out 62 cm
  tls tlm  tail some, or much, to the left by eye; tl left, who knows how much
  t0 tn    tail straight; none to be seen. Left out, it is unknown, not straight
  i4       mark at 4 o'clock; left out, it stands where it last stood
  g p      called good or poor before you looked
  w k n q  wind, contact, nock found turned, doubtful reading
  x b      lost, broken";

/// What can be typed after `end`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn end <JOURNAL> [LINE] [OPTIONS]\n       \
        quarterturn end <JOURNAL> --file <FILE> [OPTIONS]\n       \
        quarterturn end <JOURNAL> --json <FILE>",
    before_help = EXAMPLES,
    after_help = THE_LINE,
    group(ArgGroup::new("entry").args(["line", "typed", "file"]))
)]
pub struct EndArgs {
    /// The journal
    pub journal: PathBuf,

    /// The end as a line, with or without quotes: R 0, 7 r31 u8; left out, you are asked arrow by arrow
    pub line: Vec<String>,

    /// Read such lines from a file, or with - from standard input; blank lines part ends
    #[arg(long = "file", value_name = "FILE")]
    pub typed: Option<PathBuf>,

    /// Read the end as JSON from a file, or with - from standard input, and answer as JSON
    #[arg(long = "json", value_name = "FILE", conflicts_with_all = ["evening", "note", "distance"])]
    pub file: Option<PathBuf>,

    /// The evening it belongs to; ends of one evening share your aim and your sight [default: today]
    #[arg(long, value_name = "NAME")]
    pub evening: Option<String>,

    /// Anything worth remembering of this end
    #[arg(long, value_name = "TEXT")]
    pub note: Option<String>,

    /// From you to the face, where it was another distance than the journal's: kept, not pooled
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub distance: Option<String>,

    /// Ask nothing, also on a terminal: for scripts
    #[arg(long)]
    pub no_input: bool,
}
