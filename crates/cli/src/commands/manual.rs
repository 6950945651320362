//! `manual`: pages for `man`, one a command.

use std::io;
use std::path::PathBuf;

use clap::Command;
use clap_mangen::Man;
use clap_mangen::roff::{Roff, roman};
use quarterturn_journal::Existing;

use crate::answer::Answer;
use crate::args::{ManualArgs, definition};
use crate::failure::{Failure, Kind};
use crate::output;
use crate::wording::count;

/// Makes the folder and writes the pages into it.
pub fn run(args: &ManualArgs) -> Result<Answer, Failure> {
    let mut whole = definition().disable_help_subcommand(true);
    whole.build();
    output::new_folder(&args.folder)?;
    let mut files = Vec::new();
    pages(args, &whole, &mut files)?;
    let folder = args.folder.display();
    let pages = count(files.len(), "page");
    let text = format!("{pages} in {folder}. Read one with: man {folder}/quarterturn.1\n");
    Answer::of_files(text, &files, args.json)
}

/// Writes the page of a command and of each one below it.
fn pages(args: &ManualArgs, command: &Command, files: &mut Vec<PathBuf>) -> Result<(), Failure> {
    let (name, page) = page(command).map_err(|error| {
        Failure::new(Kind::InputOutput, format!("could not make a page: {error}"))
    })?;
    let file = args.folder.join(name);
    output::write(&file, page, Existing::Keep)?;
    files.push(file);
    command.get_subcommands().try_for_each(|below| pages(args, below, files))
}

/// The name of a page and its text: as in the help, the examples come before the options.
fn page(command: &Command) -> io::Result<(String, Vec<u8>)> {
    let man = Man::new(command.clone());
    let mut page = Vec::new();
    man.render_title(&mut page)?;
    man.render_name_section(&mut page)?;
    man.render_synopsis_section(&mut page)?;
    man.render_description_section(&mut page)?;
    examples(command).to_writer(&mut page)?;
    if command.has_subcommands() {
        man.render_subcommands_section(&mut page)?;
    }
    man.render_options_section(&mut page)?;
    if command.get_after_help().is_some() {
        man.render_extra_section(&mut page)?;
    }
    Ok((man.get_filename(), page))
}

/// The examples as they are typed.
fn examples(command: &Command) -> Roff {
    let mut section = Roff::new();
    let Some(examples) = command.get_before_help() else { return section };
    section.control("SH", ["EXAMPLES"]).control("nf", []);
    let examples = examples.to_string();
    for line in examples.lines().filter(|line| *line != "Examples:") {
        section.text([roman(line)]);
    }
    section.control("fi", []);
    section
}
