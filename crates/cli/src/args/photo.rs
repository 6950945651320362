//! `photo`: an end from a photo of the face.

use std::path::PathBuf;

use clap::{ArgGroup, Args};

const EXAMPLES: &str = "Examples:
  quarterturn photo dozen.journal face.jpg --spacing 166mm \\
      --hole R=442,347 --hole \"7=374,317 i3 p\"
  quarterturn photo dozen.journal nocks.jpg --spacing 166mm --lens 104mm \\
      --hole \"R=675,544 t921,639 s60cm\" --hole \"7=786,618 t1164,867\"
  quarterturn photo dozen.journal --spacing 60cm \\
      --marks \"412,388 2650,301 2781,2412 355,2290\" --holes holes.txt";

const AFTER_HELP: &str =
    "Pixels are counted to the right and down from the upper left corner, as picture
viewers show them. Behind the pixel of a hole stand the words of a line of `end`
but for the hit: i3 the mark, tl2 the tail, g p the call, w k n q x b flags.

A tail can be read in the picture as well: t921,639 is the end of the nock, and
s60cm how far the arrow sticks out. Then read all tails of the end so, that of
the reference among them, since leans are beside it. --lens, the zoom reckoned
in, makes them better known; leave it out if the picture was cut.

The marks of `paper face` are looked for in the picture; --spacing is what the
face says, or what your tape says. Of another face with four marks at the
corners of a square round the spot give their pixels with --marks, in the order
top left, top right, bottom right, bottom left. Of any other give each with
--mark: where it is on the face, and its pixel.";

/// What can be typed after `photo`.
#[derive(Args, Debug)]
#[command(
    override_usage = "quarterturn photo <JOURNAL> <IMAGE> --spacing <LENGTH> --hole <HOLE>...\n       \
        quarterturn photo <JOURNAL> [IMAGE] --spacing <LENGTH> --marks <PIXELS>\n           \
            --hole <HOLE>...\n       \
        quarterturn photo <JOURNAL> [IMAGE] --mark <MARK>... --hole <HOLE>...",
    before_help = EXAMPLES,
    after_help = AFTER_HELP,
    group(ArgGroup::new("where").args(["hole", "holes"]).required(true))
)]
pub struct PhotoArgs {
    /// The journal
    pub journal: PathBuf,

    /// The photo, a JPEG or a PNG; with marks that are given it is only drawn on
    pub image: Option<PathBuf>,

    /// How far apart the four marks are along each edge, from middle to middle
    #[arg(long, value_name = "LENGTH", conflicts_with = "mark", allow_hyphen_values = true)]
    pub spacing: Option<String>,

    /// The pixels of the four marks: top left, top right, bottom right, bottom left
    #[arg(long, value_name = "PIXELS", requires = "spacing")]
    pub marks: Option<String>,

    /// A mark: where it is, right and up of the spot, and its pixel, as -83,83=412,388; four or more
    #[arg(long, value_name = "MARK", allow_hyphen_values = true)]
    pub mark: Vec<String>,

    /// A hole: its arrow, its pixel, and words as for `end`: "7=1204,833 i3 p"
    #[arg(long, value_name = "HOLE", allow_hyphen_values = true)]
    pub hole: Vec<String>,

    /// Read the holes from a file, one a line, or with - from standard input
    #[arg(long, value_name = "FILE")]
    pub holes: Option<PathBuf>,

    /// For tails: the lens in the terms of 35 mm film, as telephones say it, as 26mm, twice that for a zoom of 2
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    pub lens: Option<String>,

    /// For tails, where the picture is left out: its pixels across and down, as 4000,3000
    #[arg(long, value_name = "PIXELS", conflicts_with = "image", allow_hyphen_values = true)]
    pub size: Option<String>,

    /// How exactly pixels were read: two of three are within so many [default: 2]
    #[arg(long, value_name = "PIXELS", allow_hyphen_values = true)]
    pub read_to: Option<String>,

    /// The evening it belongs to; ends of one evening share your aim and your sight [default: today]
    #[arg(long, value_name = "NAME")]
    pub evening: Option<String>,

    /// Anything worth remembering of this end
    #[arg(long, value_name = "TEXT")]
    pub note: Option<String>,

    /// Where to draw the grid and the hits over the photo [default: beside the journal, as an SVG]
    #[arg(long, value_name = "FILE", requires = "image")]
    pub overlay: Option<PathBuf>,

    /// Write over a drawing that exists
    #[arg(long)]
    pub force: bool,

    /// Say and draw what would be recorded, and record nothing
    #[arg(long)]
    pub dry_run: bool,

    /// Answer as JSON
    #[arg(long)]
    pub json: bool,
}
