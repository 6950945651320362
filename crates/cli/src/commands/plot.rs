//! `plot`: draws the target.

use std::path::PathBuf;

use crate::answer::Answer;
use crate::args::PlotArgs;
use crate::failure::{Failure, Kind};
use crate::opened::Opened;
use crate::output::{self, Existing};
use crate::plot::StyledBy;
use crate::wording::all;
use crate::{input, plot};

/// Writes the picture; the journal is only read.
pub fn run(args: &PlotArgs) -> Result<Answer, Failure> {
    let opened = Opened::at(&args.journal)?;
    let picture = match &args.shaft {
        None => picture(&opened),
        Some(shaft) => of_shaft(&opened, shaft)?,
    };
    let file = args.output.clone().map_or_else(|| beside(&opened, args.shaft.as_deref()), Ok)?;
    let answer = if input::is_standard(&file) {
        Answer::new(picture)
    } else {
        let existing = if args.force { Existing::Replace } else { Existing::Keep };
        output::write(&file, &picture, existing)?;
        let what =
            args.shaft.as_ref().map_or("The target".to_owned(), |name| format!("Shaft {name}"));
        Answer::new(format!("{what} is drawn in {}.\n", file.display()))
    };
    Ok(answer.noticing(opened.notices()))
}

/// The picture of a journal.
pub fn picture(opened: &Opened) -> String {
    let title = opened.path.file_name().unwrap_or_default().to_string_lossy().into_owned();
    plot::target(
        opened.journal.state().history(),
        &opened.advice(),
        opened.ruler(),
        &title,
        StyledBy::Itself,
    )
}

/// The picture of one bare shaft.
fn of_shaft(opened: &Opened, name: &str) -> Result<String, Failure> {
    let advice = opened.advice();
    let Some(report) = advice.shafts.iter().find(|report| report.shaft.as_str() == name) else {
        let what = format!("there is no bare shaft \"{name}\" in this journal");
        let names = all(advice.shafts.iter().map(|report| &report.shaft));
        return Err(Failure::new(Kind::Data, what).hinting([format!("it has {names}")]));
    };
    let history = opened.journal.state().history();
    Ok(plot::shaft(history, &advice, report, opened.ruler(), "shaft", StyledBy::Itself))
}

/// The journal's name with .svg in the place of its ending; for a shaft with its name before that.
fn beside(opened: &Opened, shaft: Option<&str>) -> Result<PathBuf, Failure> {
    let stem = opened.path.file_stem().unwrap_or_default().to_string_lossy();
    let name = match shaft {
        None => format!("{stem}.svg"),
        Some(shaft) => format!("{stem}-{shaft}.svg"),
    };
    let file = opened.path.with_file_name(name);
    if file == opened.path {
        let failure = Failure::new(Kind::Usage, "the picture would have the journal's own name");
        return Err(failure.hinting(["name another file with -o"]));
    }
    Ok(file)
}
