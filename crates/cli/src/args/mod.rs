//! What can be typed, and the help for it; nothing is settled here.

mod bench;
mod bow;
mod check;
mod checklist;
mod completions;
mod config;
mod cut;
mod definition;
mod demo;
mod end;
mod explain;
mod export;
mod fix;
mod fletch;
mod glue;
mod heads;
mod import;
mod log;
mod manual;
mod new;
mod next;
mod note;
mod paper;
mod photo;
mod plot;
mod positions_value;
mod practice;
mod quiver;
mod reach;
mod redo;
mod rehearse;
mod repair;
mod report;
mod shaft;
mod show;
mod undo;
mod vanes;
mod verify;
mod whole_number;
mod word_value;

use clap::{Parser, Subcommand};

pub use bench::{BenchArgs, MeasuredArgs, SetArgs};
pub use bow::BowArgs;
pub use check::CheckArgs;
pub use checklist::ChecklistArgs;
pub use completions::CompletionsArgs;
pub use config::ConfigArgs;
pub use cut::CutArgs;
pub use definition::definition;
pub use demo::DemoArgs;
pub use end::EndArgs;
pub use explain::ExplainArgs;
pub use export::ExportArgs;
pub use fix::FixArgs;
pub use fletch::FletchArgs;
pub use glue::GlueArgs;
pub use heads::HeadsArgs;
pub use import::ImportArgs;
pub use log::LogArgs;
pub use manual::ManualArgs;
pub use new::NewArgs;
pub use next::NextArgs;
pub use note::NoteArgs;
pub use paper::{FaceArgs, Paper, PaperArgs, PrintArgs, SheetArgs};
pub use photo::PhotoArgs;
pub use plot::{Face, PlotArgs, UnderArgs, WhatArgs};
pub use practice::PracticeArgs;
pub use quiver::QuiverArgs;
pub use reach::{ReachArgs, USUAL_PLATE};
pub use redo::RedoArgs;
pub use rehearse::RehearseArgs;
pub use repair::RepairArgs;
pub use report::ReportArgs;
pub use shaft::ShaftArgs;
pub use show::ShowArgs;
pub use undo::UndoArgs;
pub use vanes::{VaneAngle, VanesArgs};
pub use verify::VerifyArgs;

/// The whole command line.
#[derive(Debug, Parser)]
#[command(
    name = "quarterturn",
    version,
    max_term_width = 80,
    about = "Which arrow's nock to turn next, to which index, and why",
    long_about = "Shoot a dozen bare shafts beside a fletched arrow you trust, enter where they hit and \
        how they lean, and be told what to shoot next: which shaft, with its mark where, and why. \
        Everything is kept in one journal, a text file that is only ever added to.\n\n\
        Sides are as you see them facing the target. A mark at 12 o'clock is straight up on the string.",
    before_help = "Examples:\n  \
        quarterturn demo\n  \
        quarterturn new dozen.journal --shafts 1-12 --reference R \\\n      --distance 18.3m --tolerance 25mm\n  \
        quarterturn next dozen.journal\n  \
        quarterturn",
    after_help = "Without a command it says where the journal of this folder stands, and what to do next.\n\n\
        Exit codes:\n  \
        0    done, also where the answer is that nothing can be said yet\n  \
        2    the command was not understood\n  \
        3    what was entered, or the journal, is not right\n  \
        4    another program is writing to the journal\n  \
        5    a file could not be read or written"
)]
pub struct Args {
    /// What to do.
    #[command(subcommand)]
    pub command: Option<Command>,
}

/// What to do.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Begin a journal for a set of shafts
    New(Box<NewArgs>),
    /// Enter an end: where each arrow hit and how it leaned
    End(EndArgs),
    /// Enter an end from a photo of the face
    Photo(Box<PhotoArgs>),
    /// What to shoot or do now, and why
    Next(NextArgs),
    /// Every shaft: its miss, its verdict and the reason
    Show(ShowArgs),
    /// Record that the bow was changed here, or stays as it is
    Bow(BowArgs),
    /// Record what became of a shaft or a reference
    Shaft(ShaftArgs),
    /// Draw the target as you see it, as an SVG picture
    Plot(PlotArgs),
    /// Tell the story of the dozen on one page, with every picture and number
    Report(ReportArgs),
    /// Make sheets to print at true scale: face, card, log, dials, labels, fletch
    Paper(PaperArgs),
    /// Record what was measured in the workshop, or show the set
    Bench(Box<BenchArgs>),
    /// How much comes off which end of every shaft
    Cut(CutArgs),
    /// Record what was glued, and from when it may be shot
    Glue(GlueArgs),
    /// Every stage from raw shaft to quiver, and what is still missing
    Checklist(ChecklistArgs),
    /// Where the vanes go on every kept shaft
    Fletch(FletchArgs),
    /// Finished arrows by number: which keep their promise, and where the pin goes
    Verify(VerifyArgs),
    /// Enter finished arrows, and see whether broadheads land with field points
    Heads(HeadsArgs),
    /// From how far finished arrows still hit a plate
    Reach(ReachArgs),
    /// The quiver and its season: order, heads, checks, shots, limits
    Quiver(QuiverArgs),
    /// Put an earlier end right: a shot, or two arrows written for each other
    Fix(FixArgs),
    /// Take back the last entry, of whatever kind
    Undo(UndoArgs),
    /// Bring back what was taken back last
    Redo(RedoArgs),
    /// Keep a note
    Note(NoteArgs),
    /// What was entered, changed and taken back
    Log(LogArgs),
    /// Add ends from a table or an export; the same file adds nothing twice
    Import(ImportArgs),
    /// Write everything as a table or as JSON
    Export(ExportArgs),
    /// Check that a journal is whole, and say what that proves
    Check(CheckArgs),
    /// Mend a damaged journal; the damaged one is kept
    Repair(RepairArgs),
    /// Play a whole tuning with an invented dozen
    Demo(DemoArgs),
    /// Practise the job on an invented dozen, an end at a time
    Practice(PracticeArgs),
    /// What a dozen will take you: shots, evenings, and what stays open
    Rehearse(RehearseArgs),
    /// What a word or a number on a screen means, and what it rests on
    Explain(ExplainArgs),
    /// What is set for you, and where
    Config(ConfigArgs),
    /// Print what a shell needs to complete commands
    Completions(CompletionsArgs),
    /// Write the pages that `man` shows
    Manual(ManualArgs),
}
