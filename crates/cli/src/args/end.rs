//! `end`: enter an end.

use std::path::PathBuf;

use clap::{ArgGroup, Args};

/// What can be typed after `end`.
#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  \
        quarterturn end dozen.journal \"R r3 d12, 7 i3 r31 u8 tl2.5 tu1, 9 l4 u15 p, 4 x\"\n  \
        quarterturn end dozen.journal --json end.json\n\n\
        The line: one arrow a group, groups apart by commas or on lines of their own, the name first.\n  \
        r31 u8   31 right and 8 up, in the journal's unit or with their own (l and d: left, down)\n  \
        2h8      8 toward 2 o'clock           0   dead on the spot\n  \
        tl2.5    tail 2.5 degrees left (tr, tu high, td low)    t0   tail straight\n  \
        i4       mark at 4 o'clock; left out, it stands where it last stood\n  \
        g p      called good or poor before you looked\n  \
        w k n q  wind, contact, nock moved, doubtful reading    x b   lost, broken\n\
        A tail that is left out is unknown, not straight.")]
#[command(group(ArgGroup::new("entry").required(true).args(["line", "file"])))]
pub struct EndArgs {
    /// The journal
    pub journal: PathBuf,

    /// The end as a line, for example "R 0, 7 r31 u8"
    #[arg(allow_hyphen_values = true)]
    pub line: Option<String>,

    /// Read the end as JSON from a file, or with - from standard input, and answer as JSON
    #[arg(long = "json", value_name = "FILE")]
    pub file: Option<PathBuf>,
}
