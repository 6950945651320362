//! `quarterturn`: which arrow's nock to turn next, to which index, and why.

mod alike;
mod answer;
mod args;
mod caret;
mod clock;
mod commands;
mod demo;
mod dialogue;
mod failure;
mod fletching;
mod in_parallel;
mod input;
mod json;
mod opened;
mod output;
mod paper;
mod plot;
mod progress;
mod quiver_row;
mod refusal;
mod rehearsal;
mod report;
mod report_page;
mod screens;
mod shaft_list;
mod spine_list;
mod typed_file;
mod wording;
mod workshop;

use std::process::ExitCode;

use clap::Parser;

fn main() -> ExitCode {
    report::tell_panics_plainly();
    match args::Args::try_parse() {
        Ok(args) => report::outcome(commands::run(args.command)),
        Err(error) => report::unparsed(&error),
    }
}
