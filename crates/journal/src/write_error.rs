//! The ways in which bytes do not come to the disk.

use std::io;
use std::path::Path;

use thiserror::Error;

use crate::JournalError;

/// Why something was not written.
#[derive(Debug, Error)]
#[non_exhaustive]
pub enum WriteError {
    /// Something stands there already.
    #[error("it exists already")]
    Exists,
    /// A link, a folder or a device stands there, and is neither followed nor replaced.
    #[error("it is not a plain file")]
    NotPlain,
    /// A journal stands there, and nothing is ever written over one.
    #[error("it is a journal")]
    Journal,
    /// Nothing of it is left.
    #[error("{0}")]
    Nothing(io::Error),
    /// It may be there or not. A disk that failed to sync once is not believed when it is asked again.
    #[error("{0}")]
    Uncertain(io::Error),
}

impl WriteError {
    /// The same, said of the journal or its companion `path`.
    pub(crate) fn of_journal(self, path: &Path) -> JournalError {
        let path = path.to_owned();
        match self {
            Self::Exists | Self::NotPlain | Self::Journal => JournalError::Exists { path },
            Self::Nothing(source) => JournalError::NotRecorded { path, source },
            Self::Uncertain(source) => JournalError::NotConfirmed { path, source },
        }
    }
}
