//! The commands, one a file: each loads, asks for advice and shows.

mod bench;
mod bow;
mod check;
mod demo;
mod end;
mod export;
mod fix;
mod fletch;
mod heads;
mod import;
mod log;
mod new;
mod next;
mod note;
mod paper;
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
mod undo;
mod verify;

use crate::answer::Answer;
use crate::args::Command;
use crate::failure::Failure;

/// Runs a command.
pub fn run(command: Command) -> Result<Answer, Failure> {
    match command {
        Command::New(args) => new::run(&args),
        Command::End(args) => end::run(&args),
        Command::Next(args) => next::run(&args),
        Command::Show(args) => show::run(&args),
        Command::Plot(args) => plot::run(&args),
        Command::Report(args) => report::run(&args),
        Command::Paper(args) => paper::run(&args),
        Command::Bow(args) => bow::run(&args),
        Command::Shaft(args) => shaft::run(&args),
        Command::Bench(args) => bench::run(&args),
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
    }
}
