//! Where a setting comes from.

use std::fmt;
use std::path::PathBuf;

use crate::wording::visible;

/// Where a setting comes from.
#[derive(Clone, Debug)]
pub enum Origin {
    /// A variable of the environment.
    Environment(String),
    /// A file.
    File(PathBuf),
}

impl fmt::Display for Origin {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Environment(variable) => f.write_str(variable),
            Self::File(path) => f.write_str(&visible(&path.to_string_lossy())),
        }
    }
}
