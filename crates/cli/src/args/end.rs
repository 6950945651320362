//! `end`: enter an end.

use std::path::PathBuf;

use clap::{ArgGroup, Args};

const AFTER_HELP: &str = "Examples:
  quarterturn end dozen.journal \"R r3 d12, 7 i3 r31 u8 tl2.5 tu1, 9 l4 u15 p, 4 x\"
  quarterturn end dozen.journal --json end.json

The line: one arrow a group, its name first; commas or line ends between groups.
  r31 u8   31 right and 8 up (l left, d down), in the journal's unit or with one
  2h8      8 toward 2 o'clock
  0        dead on the spot
  tl2.5    tail 2.5 degrees left (tr right, tu high, td low)
  t0       tail straight; a tail that is left out is unknown, not straight
  i4       mark at 4 o'clock; left out, it stands where it last stood
  g p      called good or poor before you looked
  w k n q  wind, contact, nock found turned, doubtful reading
  x b      lost, broken";

/// What can be typed after `end`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn end <JOURNAL> <LINE>\n       quarterturn end <JOURNAL> --json <FILE>",
    after_help = AFTER_HELP,
    group(ArgGroup::new("entry").required(true).args(["line", "file"]))
)]
pub struct EndArgs {
    /// The journal
    pub journal: PathBuf,

    /// The end as a line, for example "R 0, 7 r31 u8"
    pub line: Option<String>,

    /// Read the end as JSON from a file, or with - from standard input, and answer as JSON
    #[arg(long = "json", value_name = "FILE")]
    pub file: Option<PathBuf>,
}
