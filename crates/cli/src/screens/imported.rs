//! What an import added, or would add.

use quarterturn_journal::Entry;

use crate::opened::Opened;
use crate::wording::{command, count, paragraph};

/// What became of the entries of a file.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Imported {
    /// New ends.
    pub ends: usize,
    /// Shots in them.
    pub shots: usize,
    /// New entries of other kinds.
    pub others: usize,
    /// Entries that the journal has already.
    pub known: usize,
}

impl Imported {
    /// Counts one entry that is new.
    pub fn count(&mut self, entry: &Entry) {
        match entry {
            Entry::End(end) => {
                self.ends += 1;
                self.shots += end.shots.len();
            }
            _ => self.others += 1,
        }
    }
}

/// What was imported; or, of a dry run, what would be.
pub fn imported(opened: &Opened, imported: Imported, dry_run: bool) -> String {
    let Imported { ends, shots, others, known } = imported;
    let of_ends =
        (ends > 0).then(|| format!("{} with {}", count(ends, "end"), count(shots, "shot")));
    let of_others = match (others, ends) {
        (0, _) => None,
        (_, 0) => Some(count_entries(others)),
        _ => Some(format!("{others} of other kinds")),
    };
    let added: Vec<String> = of_ends.into_iter().chain(of_others).collect();
    let added = match (ends + others, dry_run) {
        (0, _) => "Nothing new".to_owned(),
        (_, true) => format!("Would be imported: {}", added.join(" and ")),
        (_, false) => format!("Imported: {}", added.join(" and ")),
    };
    let already = match known {
        0 => String::new(),
        known => format!("; {} of the file stand in the journal already", count_entries(known)),
    };
    let after = if dry_run {
        "Nothing was recorded: this was a dry run.".to_owned()
    } else {
        format!("Then: {}", command("next", &opened.path))
    };
    format!("{}\n\n{after}\n", paragraph("", &format!("{added}{already}.")))
}

fn count_entries(number: usize) -> String {
    if number == 1 { "1 entry".to_owned() } else { format!("{number} entries") }
}
