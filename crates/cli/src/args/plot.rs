//! `plot`: a picture of the target.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

/// What can be typed after `plot`.
#[derive(Args, Debug)]
#[command(after_help = "Examples:\n  \
        quarterturn plot dozen.journal\n  \
        quarterturn plot dozen.journal -o target.svg --force\n  \
        quarterturn plot dozen.journal --shaft 7\n  \
        quarterturn plot dozen.journal --finished --plate 8in")]
pub struct PlotArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// One shaft all round the clock instead of the whole target
    #[arg(long, value_name = "SHAFT")]
    pub shaft: Option<String>,

    /// The course of the tuning: what was settled by which shot, and where the reference landed
    #[arg(long, conflicts_with_all = ["shaft", "face", "plate"])]
    pub course: bool,

    /// Finished arrows from every distance, field points and broadheads, and the chance on the plate
    #[arg(long, conflicts_with_all = ["shaft", "course", "face"])]
    pub finished: bool,

    /// Draw the rings of a World Archery face about the spot, by its diameter
    #[arg(long, value_enum, conflicts_with_all = ["shaft", "plate"])]
    pub face: Option<Face>,

    /// Draw a round plate of this diameter about the spot: 20cm, 8in [default with --finished: 20cm]
    #[arg(long, value_name = "LENGTH", conflicts_with = "shaft")]
    pub plate: Option<String>,

    /// The picture to write, or - for standard output [default: beside the journal, ending in .svg]
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,

    /// Write over a picture that exists
    #[arg(long)]
    pub force: bool,
}

/// A face of World Archery.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub enum Face {
    /// 122 cm
    #[value(name = "122cm")]
    Cm122,
    /// 80 cm
    #[value(name = "80cm")]
    Cm80,
    /// 60 cm
    #[value(name = "60cm")]
    Cm60,
    /// 40 cm
    #[value(name = "40cm")]
    Cm40,
}
