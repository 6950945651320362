//! What tells one record from every other, in whatever journal.

use std::fmt;

use serde::{Deserialize, Serialize};

/// A random number of 64 bits, written as 16 hexadecimal digits in small letters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(into = "String", try_from = "String")]
pub struct RecordId(u64);

impl RecordId {
    /// The id of these bits: whoever writes a record draws them at random.
    pub const fn from_bits(bits: u64) -> Self {
        Self(bits)
    }

    /// The id that is `count` further on.
    pub(crate) const fn after(self, count: u64) -> Self {
        Self(self.0.wrapping_add(count))
    }
}

impl fmt::Display for RecordId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:016x}", self.0)
    }
}

impl From<RecordId> for String {
    fn from(id: RecordId) -> Self {
        id.to_string()
    }
}

impl TryFrom<String> for RecordId {
    type Error = &'static str;

    fn try_from(text: String) -> Result<Self, Self::Error> {
        let id = u64::from_str_radix(&text, 16).map(Self);
        // Written again it must be the same text: one id has one spelling.
        id.ok().filter(|id| id.to_string() == text).ok_or("an id is 16 hexadecimal digits")
    }
}
