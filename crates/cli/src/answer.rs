//! What a command says when it has done its work.

use std::path::PathBuf;

use crate::failure::Failure;
use crate::json;

/// The answer of a command.
#[derive(Clone, Debug, Default)]
pub struct Answer {
    /// What it prints, line ends included.
    pub text: String,
    /// What is said beside it, on standard error.
    pub notices: Vec<String>,
    /// What is wrong all the same, and ends the program with its code.
    pub failure: Option<Failure>,
}

impl Answer {
    /// An answer with nothing beside it.
    pub fn new(text: String) -> Self {
        Self { text, ..Self::default() }
    }

    /// An answer of a command that wrote `files`: `text`, or as JSON which files they are.
    pub fn of_files(text: String, files: &[PathBuf], json: bool) -> Result<Self, Failure> {
        Ok(Self::new(if json { json::written(files)? } else { text }))
    }

    /// The same with something said beside it.
    pub fn noticing(mut self, notices: impl IntoIterator<Item = String>) -> Self {
        self.notices.extend(notices);
        self
    }

    /// The same, ending in a failure.
    pub fn failing(self, failure: Failure) -> Self {
        Self { failure: Some(failure), ..self }
    }
}
