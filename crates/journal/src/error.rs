//! The ways in which work with a journal can fail, in a person's words.

use std::io::{self, ErrorKind};
use std::path::{Path, PathBuf};

use thiserror::Error;

use crate::{Damage, Fault};

/// Why something could not be done with a journal; the journal is as it was, unless the variant says otherwise.
#[derive(Debug, Error)]
#[non_exhaustive]
pub enum JournalError {
    /// There is no such file.
    #[error("there is no journal {}", path.display())]
    Missing {
        /// Where it was looked for.
        path: PathBuf,
    },
    /// A journal is never begun over a file.
    #[error("{} exists already and is not overwritten", path.display())]
    Exists {
        /// The file.
        path: PathBuf,
    },
    /// The file holds no whole record.
    #[error("{} holds no whole record", path.display())]
    NotBegun {
        /// The file.
        path: PathBuf,
    },
    /// A line is damaged; nothing after it can be trusted.
    #[error("{}, line {line}: {damage}", path.display())]
    Damaged {
        /// The journal.
        path: PathBuf,
        /// The line, the first being 1.
        line: u64,
        /// What is wrong with it.
        damage: Damage,
    },
    /// Nothing can be mended without the record that says how the journal was begun.
    #[error("{} cannot be mended: the record that says how it was begun is lost", path.display())]
    NoBeginning {
        /// The journal.
        path: PathBuf,
    },
    /// A newer program wrote some of it, and so it is not for this one to mend.
    #[error("{} is not mended: {damage}", path.display())]
    Newer {
        /// The journal.
        path: PathBuf,
        /// What is not known here.
        damage: Damage,
    },
    /// The entry is wrong.
    #[error("{}", list(faults))]
    Refused {
        /// Everything that was found wrong; never empty.
        faults: Vec<Fault>,
    },
    /// No entry stands that could be taken back.
    #[error("there is nothing to take back in {}", path.display())]
    NothingToUndo {
        /// The journal.
        path: PathBuf,
    },
    /// No entry was taken back that could be brought back.
    #[error("there is nothing to bring back in {}", path.display())]
    NothingToRedo {
        /// The journal.
        path: PathBuf,
    },
    /// Another program is writing.
    #[error("{} is in use by another program{}", path.display(), named(*holder))]
    Busy {
        /// The journal.
        path: PathBuf,
        /// The process that holds the lock, where it is known.
        holder: Option<u32>,
    },
    /// The entry could not be written, and nothing of it is left.
    #[error("nothing was recorded: could not write to {}: {source}", path.display())]
    NotRecorded {
        /// The journal.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// The entry may or may not have been written: the only case in which the journal may have changed.
    #[error("it is not certain that this was recorded: could not write to {}: {source}", path.display())]
    NotConfirmed {
        /// The journal.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
    /// Anything else that the system refused.
    #[error("could not {action} {}: {source}", path.display())]
    Io {
        /// What was tried.
        action: &'static str,
        /// On which file.
        path: PathBuf,
        /// What the system said.
        source: io::Error,
    },
}

impl JournalError {
    pub(crate) fn io(action: &'static str, path: &Path) -> impl FnOnce(io::Error) -> Self {
        let path = path.to_owned();
        move |source| Self::Io { action, path, source }
    }

    /// What to do now, where that is known.
    pub fn way_on(&self) -> Option<&'static str> {
        Some(match self {
            Self::Missing { .. } => "begin one with `new`, or check the name",
            Self::Exists { .. } => "choose another name",
            Self::NotBegun { .. } => {
                "if it is a journal that was never begun, delete it and begin again"
            }
            Self::Newer { .. }
            | Self::Damaged { damage: Damage::Format { .. } | Damage::Kind { .. }, .. } => {
                "use the newer version of this program that wrote it"
            }
            Self::Damaged { .. } => {
                "take the line from a copy, or see what `repair --dry-run` can keep; nothing was changed"
            }
            Self::NoBeginning { .. } => {
                "begin another journal like it with `new`, put its line in the place of the first, and try again"
            }
            Self::Busy { .. } => "wait until it is done and try again",
            Self::NotConfirmed { .. } => "look with `show` before you enter it again",
            Self::NotRecorded { source, .. } => match source.kind() {
                ErrorKind::NotFound => "make the folder first, or check its name",
                ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => {
                    "see to it that you may write there, then enter it again"
                }
                _ => "make room or mend the disk, then enter it again",
            },
            Self::NothingToRedo { .. } => {
                "only what `undo` took back last, with nothing entered since, can be brought back"
            }
            Self::Refused { .. } | Self::NothingToUndo { .. } | Self::Io { .. } => return None,
        })
    }
}

fn list(faults: &[Fault]) -> String {
    faults.iter().map(Fault::to_string).collect::<Vec<_>>().join("\n")
}

fn named(holder: Option<u32>) -> String {
    holder.map(|pid| format!(" (process {pid})")).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::WriteError;

    /// What only a disk that fails, another program or a newer one brings about.
    #[test]
    fn rare_messages_say_what_happened_and_what_to_do() {
        let path = || PathBuf::from("fen.journal");
        let full = || ErrorKind::StorageFull.into();
        let told = [
            JournalError::Busy { path: path(), holder: Some(4711) },
            JournalError::NotConfirmed { path: path(), source: full() },
            JournalError::Io { action: "cut back", path: path(), source: full() },
            JournalError::Newer { path: path(), damage: Damage::Format { found: 9 } },
        ]
        .map(|error| format!("{error}; {}", error.way_on().unwrap_or_default()));
        let expected = [
            "fen.journal is in use by another program (process 4711); wait until it is done and try again",
            "it is not certain that this was recorded: could not write to fen.journal: no storage space; look with \
             `show` before you enter it again",
            "could not cut back fen.journal: no storage space; ",
            "fen.journal is not mended: it has format 9, and this program reads format 1; use the newer version of \
             this program that wrote it",
        ];
        assert_eq!(told, expected);
        let told = [WriteError::Exists, WriteError::NotPlain].map(|error| error.to_string());
        assert_eq!(told, ["it exists already", "it is not a plain file"]);
    }
}
