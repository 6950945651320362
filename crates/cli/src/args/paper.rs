//! `paper`: sheets to print.

use std::path::PathBuf;

use clap::{Args, Subcommand, ValueEnum};
use quarterturn_journal::FaceUnit;

use super::VanesArgs;
use super::word_value::word;

/// What can be typed after `paper`.
#[derive(Args, Debug)]
#[command(
    subcommand_required = true,
    arg_required_else_help = true,
    before_help = "Examples:\n  \
        quarterturn paper face\n  \
        quarterturn paper card dozen.journal --paper letter\n  \
        quarterturn paper dials dozen.journal --diameter 6.5mm -o dials.svg",
    after_help = "Every sheet has bars of 100 mm and of 2 in, across and up. Print at actual size (100 %) and lay a \
        rule on them; if your printer shrinks, print again with what you measured: --measured 97.2mm,97.5mm"
)]
pub struct PaperArgs {
    /// Which sheet.
    #[command(subcommand)]
    pub sheet: SheetArgs,
}

/// Which sheet.
#[derive(Debug, Subcommand)]
pub enum SheetArgs {
    /// A face with a grid, its hours, and four marks for a photo
    Face(FaceArgs),
    /// The next end: the order, where each mark goes, boxes for hits and tails
    Card(CardArgs),
    /// A blank form for an evening without the program
    Log(LogArgs),
    /// A dial and a strip to wrap round each shaft, with the present and the new index
    Dials(DialsArgs),
    /// Labels for the shafts
    Labels(LabelsArgs),
    /// Where the vanes go on every kept shaft: a dial and a strip in true size
    Fletch(FletchSheetArgs),
    /// The quiver: the order, the heads, the checks, boxes for the season
    Quiver(QuiverCardArgs),
}

/// What can be typed after `paper face`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
    quarterturn paper face\n  \
    quarterturn paper face --across 60cm --paper letter -o wide.pdf")]
pub struct FaceArgs {
    /// How wide and high it is; larger than the paper, it comes in parts [default: what fits on one sheet]
    #[arg(long, value_name = "LENGTH")]
    pub across: Option<String>,

    /// The unit of its grid: 1 cm, or half an inch [default: cm]
    #[arg(long, value_name = "UNIT", value_parser = word::<FaceUnit>())]
    pub units: Option<FaceUnit>,

    /// How it is printed.
    #[command(flatten)]
    pub print: PrintArgs,
}

/// What can be typed after `paper card`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
    quarterturn paper card dozen.journal\n  \
    quarterturn paper card dozen.journal --paper letter -o next.svg")]
pub struct CardArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// How it is printed.
    #[command(flatten)]
    pub print: PrintArgs,
}

/// What can be typed after `paper log`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
    quarterturn paper log\n  \
    quarterturn paper log --paper letter -o evening.pdf")]
pub struct LogArgs {
    /// How it is printed.
    #[command(flatten)]
    pub print: PrintArgs,
}

/// What can be typed after `paper dials`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
    quarterturn paper dials dozen.journal --diameter 6.5mm\n  \
    quarterturn paper dials dozen.journal --diameter 0.244in -o dials.svg")]
pub struct DialsArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// How thick the shafts are on the outside: 6.5mm, 0.244in
    #[arg(long, value_name = "LENGTH")]
    pub diameter: String,

    /// How it is printed.
    #[command(flatten)]
    pub print: PrintArgs,
}

/// What can be typed after `paper labels`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
    quarterturn paper labels dozen.journal\n  \
    quarterturn paper labels dozen.journal --measured 97.2mm,97.5mm -o labels.pdf")]
pub struct LabelsArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// How it is printed.
    #[command(flatten)]
    pub print: PrintArgs,
}

/// What can be typed after `paper fletch`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
    quarterturn paper fletch dozen.journal --diameter 6.5mm\n  \
    quarterturn paper fletch dozen.journal --diameter 6.5mm --vanes 4 -o four.pdf")]
pub struct FletchSheetArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// How thick the shafts are on the outside: 6.5mm, 0.244in
    #[arg(long, value_name = "LENGTH")]
    pub diameter: String,

    /// The vanes.
    #[command(flatten)]
    pub vanes: VanesArgs,

    /// How it is printed.
    #[command(flatten)]
    pub print: PrintArgs,
}

/// What can be typed after `paper quiver`.
#[derive(Args, Debug)]
#[command(before_help = "Examples:\n  \
    quarterturn paper quiver dozen.journal\n  \
    quarterturn paper quiver dozen.journal --paper letter -o season.pdf")]
pub struct QuiverCardArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// How it is printed.
    #[command(flatten)]
    pub print: PrintArgs,
}

/// How a sheet is printed and where it is written.
#[derive(Args, Debug)]
pub struct PrintArgs {
    /// The paper in your printer
    #[arg(long, value_enum, default_value_t = Paper::A4)]
    pub paper: Paper,

    /// How long the bars of 100 mm came out, across and up: 97.2mm,97.5mm
    #[arg(long, value_name = "ACROSS,UP")]
    pub measured: Option<String>,

    /// The file to write, ending in .pdf, .svg or .png [default: the sheet's name, ending in .pdf]
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,

    /// As PNG, where the program was built with that
    #[arg(long, conflicts_with = "output")]
    pub png: bool,

    /// Write over a file that exists
    #[arg(long)]
    pub force: bool,

    /// Answer as JSON: the files that were written
    #[arg(long)]
    pub json: bool,
}

/// A size of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum Paper {
    /// 210 by 297 mm
    A4,
    /// 8.5 by 11 in
    Letter,
}
