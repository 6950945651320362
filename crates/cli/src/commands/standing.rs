//! Without a command: where the archer stands, and what to do next.

use std::path::Path;

use quarterturn_journal::journals_in;

use crate::answer::Answer;
use crate::failure::{Failure, Kind};
use crate::opened::Opened;
use crate::screens;

/// Says it of the journal of this folder; of several it names them.
pub fn run() -> Result<Answer, Failure> {
    let found = journals_in(Path::new(".")).map_err(|error| {
        Failure::new(Kind::InputOutput, format!("could not read this folder: {error}"))
    })?;
    let names: Vec<_> = found.iter().filter_map(|path| path.file_name().map(Path::new)).collect();
    match names.as_slice() {
        [journal] => of(journal),
        journals => Ok(Answer::new(screens::journals(journals))),
    }
}

fn of(journal: &Path) -> Result<Answer, Failure> {
    let opened = Opened::at(journal)?;
    let text = screens::standing(&opened, &opened.advice());
    Ok(Answer::new(text).noticing(opened.notices()))
}
