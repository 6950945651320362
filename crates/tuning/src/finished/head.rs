//! What an arrow carries in front.

use std::fmt;
use std::str::FromStr;

use thiserror::Error;

/// The word for field points.
const FIELD: &str = "field";

/// The longest name of a head, in characters.
const LONGEST: usize = 40;

/// A field point, or a broadhead by the name that the archer gives it.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub enum Head {
    /// A field point.
    #[default]
    Field,
    /// A broadhead.
    Broadhead(String),
}

/// A text that cannot name a head.
#[derive(Clone, Copy, Debug, Error, PartialEq, Eq)]
#[error("a head is \"field\" or a name of 1 to {LONGEST} characters on one line")]
pub struct HeadNameError;

impl FromStr for Head {
    type Err = HeadNameError;

    fn from_str(text: &str) -> Result<Self, HeadNameError> {
        let name = text.trim();
        let long = name.chars().count() > LONGEST;
        if name.is_empty() || long || name.contains(char::is_control) {
            return Err(HeadNameError);
        }
        // Nobody calls a broadhead by that name, and many a one begins a word with a capital.
        let field = name.eq_ignore_ascii_case(FIELD);
        Ok(if field { Self::Field } else { Self::Broadhead(name.to_owned()) })
    }
}

impl fmt::Display for Head {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Field => FIELD,
            Self::Broadhead(name) => name,
        })
    }
}
