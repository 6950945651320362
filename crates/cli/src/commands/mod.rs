//! The commands, one a file: each loads, asks for advice and shows.

mod bench;
mod bow;
mod check;
mod checklist;
mod completions;
mod config;
mod cut;
mod demo;
mod end;
mod explain;
mod export;
mod fix;
mod fletch;
mod fletch_sheet;
mod glue;
mod heads;
mod import;
mod log;
mod manual;
mod new;
mod next;
mod no_such_end;
mod note;
mod paper;
mod photo;
mod plot;
mod practice;
mod quiver;
mod reach;
mod redo;
mod rehearse;
mod repair;
mod report;
mod shaft;
mod show;
mod standing;
mod undo;
mod verify;

use crate::answer::Answer;
use crate::args::Command;
use crate::failure::Failure;

pub use heads::length;

/// Runs a command; without one, says where the archer stands.
pub fn run(command: Option<Command>) -> Result<Answer, Failure> {
    let Some(command) = command else { return standing::run() };
    match command {
        Command::New(args) => new::run(&args),
        Command::End(args) => end::run(&args),
        Command::Next(args) => next::run(&args),
        Command::Show(args) => show::run(&args),
        Command::Plot(args) => plot::run(&args),
        Command::Report(args) => report::run(&args),
        Command::Photo(args) => photo::run(&args),
        Command::Paper(args) => paper::run(&args),
        Command::Bow(args) => bow::run(&args),
        Command::Shaft(args) => shaft::run(&args),
        Command::Bench(args) => bench::run(&args),
        Command::Cut(args) => cut::run(&args),
        Command::Glue(args) => glue::run(&args),
        Command::Checklist(args) => checklist::run(&args),
        Command::Fletch(args) => fletch::run(&args),
        Command::Verify(args) => verify::run(&args),
        Command::Heads(args) => heads::run(&args),
        Command::Reach(args) => reach::run(&args),
        Command::Quiver(args) => quiver::run(&args),
        Command::Fix(args) => fix::run(&args),
        Command::Undo(args) => undo::run(&args),
        Command::Check(args) => check::run(&args),
        Command::Repair(args) => repair::run(&args),
        Command::Redo(args) => redo::run(&args),
        Command::Note(args) => note::run(&args),
        Command::Log(args) => log::run(&args),
        Command::Import(args) => import::run(&args),
        Command::Export(args) => export::run(&args),
        Command::Demo(args) => demo::run(&args),
        Command::Practice(args) => practice::run(&args),
        Command::Rehearse(args) => rehearse::run(&args),
        Command::Explain(args) => explain::run(&args),
        Command::Config(args) => config::run(&args),
        Command::Completions(args) => Ok(completions::run(&args)),
        Command::Manual(args) => manual::run(&args),
    }
}
