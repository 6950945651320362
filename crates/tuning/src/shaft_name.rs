//! The number or name painted on a shaft.

use std::fmt;
use std::str::FromStr;
use std::sync::Arc;

use thiserror::Error;

/// The number or name on a shaft: 1 to 16 letters, digits, `-`, `_` or `.`. A million shots share the names of a dozen.
#[derive(Clone, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct ShaftName(Arc<str>);

/// Why a text cannot name a shaft.
#[derive(Clone, Debug, Error, PartialEq, Eq)]
#[error("a shaft's name is 1 to {} letters, digits, '-', '_' or '.'", ShaftName::LONGEST)]
pub struct ShaftNameError;

impl ShaftName {
    /// The longest name, in characters: what can be painted on a shaft and read again.
    pub const LONGEST: usize = 16;

    /// The name as text.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl FromStr for ShaftName {
    type Err = ShaftNameError;

    fn from_str(text: &str) -> Result<Self, Self::Err> {
        let plain = |c: char| c.is_alphanumeric() || matches!(c, '-' | '_' | '.');
        if (1..=Self::LONGEST).contains(&text.chars().count()) && text.chars().all(plain) {
            Ok(Self(text.into()))
        } else {
            Err(ShaftNameError)
        }
    }
}

impl fmt::Display for ShaftName {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&self.0)
    }
}
