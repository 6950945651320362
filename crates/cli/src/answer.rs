//! What a command says when it has done its work.

/// The answer of a command.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Answer {
    /// What it prints, line ends included.
    pub text: String,
    /// What is said beside it, on standard error.
    pub notices: Vec<String>,
}

impl Answer {
    /// An answer with nothing beside it.
    pub fn new(text: String) -> Self {
        Self { text, notices: Vec::new() }
    }

    /// The same with something said beside it.
    pub fn noticing(mut self, notices: impl IntoIterator<Item = String>) -> Self {
        self.notices.extend(notices);
        self
    }
}
