//! `plot`: a picture of the target.

use std::path::PathBuf;

use clap::{ArgGroup, Args, ValueEnum};

use super::whole_number::whole_number;

/// What can be typed after `plot`.
#[derive(Args, Debug)]
#[command(
    before_help = "Examples:\n  \
        quarterturn plot dozen.journal\n  \
        quarterturn plot dozen.journal -o target.svg --force\n  \
        quarterturn plot dozen.journal --shaft 7\n  \
        quarterturn plot dozen.journal --end 5 --face 40cm\n  \
        quarterturn plot dozen.journal --before-after\n  \
        quarterturn plot dozen.journal --finished --plate 8in",
    group = ArgGroup::new("part").args(["shaft", "end", "before_after", "lean", "course", "finished"])
)]
pub struct PlotArgs {
    /// The journal; it is only read
    pub journal: PathBuf,

    /// What is drawn.
    #[command(flatten)]
    pub what: WhatArgs,

    /// What lies under the hits.
    #[command(flatten)]
    pub under: UnderArgs,

    /// The picture to write, or - for standard output; ending in .png it is a PNG [default: beside the journal, ending
    /// in .svg]
    #[arg(short, long, value_name = "FILE")]
    pub output: Option<PathBuf>,

    /// As PNG beside the journal, where the program was built with that
    #[arg(long, conflicts_with = "output")]
    pub png: bool,

    /// Write over a picture that exists
    #[arg(long)]
    pub force: bool,

    /// Answer as JSON: the files that were written
    #[arg(long)]
    pub json: bool,
}

/// A part of the story instead of the whole target.
#[derive(Args, Debug)]
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is an option of its own, and one group lets one through"
)]
pub struct WhatArgs {
    /// One shaft all round the clock instead of the whole target
    #[arg(long, value_name = "SHAFT")]
    pub shaft: Option<String>,

    /// One end as it was shot, from the spot; ends are counted from 1
    #[arg(long, value_name = "NUMBER", value_parser = whole_number::<usize>)]
    pub end: Option<usize>,

    /// Where every shaft landed as built, and where it lands at the index of its verdict
    #[arg(long)]
    pub before_after: bool,

    /// How tails go with hits: lean against hit, with what was learned of it
    #[arg(long)]
    pub lean: bool,

    /// The course of the tuning: what was settled by which shot, and where the reference landed
    #[arg(long)]
    pub course: bool,

    /// Finished arrows from every distance, field points and broadheads, and the chance on the plate
    #[arg(long)]
    pub finished: bool,
}

/// What lies under the hits.
#[derive(Args, Debug)]
pub struct UnderArgs {
    /// Draw the rings of a World Archery face about the spot, by its diameter
    #[arg(long, value_enum, conflicts_with_all = ["shaft", "before_after", "lean", "course", "finished", "plate"])]
    pub face: Option<Face>,

    /// Draw a round plate of this diameter about the spot: 20cm, 8in [default with --finished: 20cm]
    #[arg(long, value_name = "LENGTH", conflicts_with_all = ["shaft", "before_after", "lean", "course"])]
    pub plate: Option<String>,
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
