//! `plot`: draws the target.

use std::path::PathBuf;

use quarterturn_journal::Existing;

use crate::answer::Answer;
use crate::args::PlotArgs;
use crate::failure::{Failure, Kind};
use crate::opened::Opened;
use crate::output;
use crate::{input, plot};

/// Writes the picture; the journal is only read.
pub fn run(args: &PlotArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let picture = picture(&opened);
    let file = args.output.clone().map_or_else(|| beside(&opened), Ok)?;
    let answer = if input::is_standard(&file) {
        Answer::new(picture)
    } else {
        let existing = if args.force { Existing::Replace } else { Existing::Keep };
        output::write(&file, &picture, existing)?;
        Answer::new(format!("The target is drawn in {}.\n", file.display()))
    };
    Ok(answer.noticing(opened.notices()))
}

/// The picture of a journal.
pub fn picture(opened: &Opened) -> String {
    let title = opened.path.file_name().unwrap_or_default().to_string_lossy().into_owned();
    plot::target(opened.journal.state().history(), &opened.advice(), opened.ruler(), &title)
}

/// The journal's name with .svg in the place of its ending.
fn beside(opened: &Opened) -> Result<PathBuf, Failure> {
    let file = opened.path.with_extension("svg");
    if file == opened.path {
        let failure = Failure::new(Kind::Usage, "the picture would have the journal's own name");
        return Err(failure.hinting(["name another file with -o"]));
    }
    Ok(file)
}
