//! What a journal refuses, as a person is told.

use std::ops::Range;
use std::path::Path;

use quarterturn_journal::{Fault, JournalError, What, journals_in};
use quarterturn_tuning::ShaftName;

use crate::failure::{Failure, Kind, Marked};
use quarterturn_entry::closest;

/// What is said above an end in which something is wrong.
pub const END_NOT_RECORDED: &str = "the end was not recorded";

impl From<JournalError> for Failure {
    fn from(error: JournalError) -> Self {
        let kind = match &error {
            JournalError::Refused { .. }
            | JournalError::Damaged { .. }
            | JournalError::Newer { .. }
            | JournalError::NoBeginning { .. }
            | JournalError::NotBegun { .. }
            | JournalError::NothingToUndo { .. }
            | JournalError::NothingToRedo { .. } => Kind::Data,
            JournalError::Busy { .. } => Kind::Busy,
            _ => Kind::InputOutput,
        };
        match &error {
            JournalError::Refused { faults } => {
                let said: Vec<String> = faults.iter().map(|fault| fault.what.to_string()).collect();
                Self::new(kind, said.join("; ")).hinting(hints(faults))
            }
            JournalError::Missing { path } => {
                Self::new(kind, error.to_string()).hinting(meant_by(path)).hinting(error.way_on())
            }
            _ => Self::new(kind, error.to_string()).hinting(error.way_on()),
        }
    }
}

/// The journal beside it that has nearly the same name, or the name without its ending.
fn meant_by(path: &Path) -> Option<String> {
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty());
    let found = journals_in(folder.unwrap_or(Path::new("."))).ok()?;
    let names: Vec<_> = found.iter().filter_map(|found| found.file_name()?.to_str()).collect();
    let typed = path.file_name()?.to_str()?;
    let without_ending =
        names.iter().copied().find(|name| name.strip_suffix(".journal") == Some(typed));
    let meant = without_ending.or_else(|| closest(typed, names))?;
    Some(format!("did you mean \"{}\"?", path.with_file_name(meant).display()))
}

/// An end that was not recorded: each fault where it stands in `marked`.
pub fn end_not_recorded(
    what: &str,
    faults: &[Fault],
    marked: Marked,
    span: impl Fn(&Fault) -> Range<usize>,
) -> Failure {
    let marked = faults
        .iter()
        .fold(marked, |marked, fault| marked.wrong(span(fault), fault.what.to_string()));
    Failure::new(Kind::Data, what).marking(marked).hinting(hints(faults))
}

/// The ways on of all faults: the word that was perhaps meant before the words that there are.
pub fn hints(faults: &[Fault]) -> Vec<String> {
    faults.iter().flat_map(|fault| meant(&fault.what).into_iter().chain(fault.way_on())).collect()
}

fn meant(what: &What) -> Option<String> {
    let meant = match what {
        What::UnknownShaft { name, known } => closest(name, known.iter().map(ShaftName::as_str)),
        What::UnknownWord { word, known } => closest(word, known.iter().copied()),
        _ => None,
    };
    meant.map(|meant| format!("did you mean \"{meant}\"?"))
}
