//! `quarterturn`: which arrow's nock to turn next, to which index, and why.

mod alike;
mod answer;
mod args;
mod caret;
mod checklist;
mod clock;
mod commands;
mod curing;
mod demo;
mod dialogue;
mod failure;
mod fletching;
mod glossary;
mod in_parallel;
mod input;
mod json;
mod opened;
mod output;
mod paper;
mod photo;
mod picture_file;
mod plot;
#[cfg_attr(not(feature = "png"), path = "no_png.rs")]
mod png;
mod progress;
mod quiver_row;
mod refusal;
mod rehearsal;
mod report;
mod report_page;
mod screens;
mod settings;
mod shaft_list;
mod spine_list;
mod typed_file;
mod version;
mod wording;
mod workshop;

use std::env;
use std::process::ExitCode;

use clap::FromArgMatches;

use args::Args;
use failure::{Failure, Kind};
use settings::Settings;

fn main() -> ExitCode {
    report::tell_panics_plainly();
    let word = env::args_os().nth(1).unwrap_or_default();
    match Settings::of(&word.to_string_lossy()) {
        Ok(settings) => ended(&settings),
        Err(failure) => report::outcome(Err(failure)),
    }
}

/// Parses the command line, in which what is set need not be typed, and runs the command.
fn ended(settings: &Settings) -> ExitCode {
    let matches = settings.applied(args::definition()).try_get_matches();
    match matches.and_then(|matches| Args::from_arg_matches(&matches)) {
        Ok(args) => {
            let told = |failure: Failure| match failure.kind {
                Kind::Usage => failure.hinting(settings.told()),
                _ => failure,
            };
            report::outcome(commands::run(args.command).map_err(told))
        }
        Err(error) => report::unparsed(&error, settings.told()),
    }
}
