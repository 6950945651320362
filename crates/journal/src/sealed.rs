//! One line of a journal as far as it can be trusted without the others.

use serde::Deserialize;
use serde_json::value::RawValue;

use crate::chain::{FORMAT, hex};
use crate::json_reason::reason;
use crate::{Damage, Entry, RecordId, Stamp, Timestamp};

/// What stands between the checksummed bytes of a line and its checksum.
const SEAL: &str = ",\"crc\":\"";

/// What a line begins with, in every format.
pub(crate) const LINE_BEGINS: &str = "{\"v\":";

/// What ends a line after its checksum.
const END: &str = "\"}";

/// A line whose checksum is right.
#[derive(Deserialize)]
pub(crate) struct Sealed<'a> {
    /// The number it states.
    pub seq: u64,
    id: RecordId,
    t: Timestamp,
    kind: String,
    #[serde(borrow)]
    data: &'a RawValue,
    /// What it states of the line before it.
    pub prev: String,
}

impl<'a> Sealed<'a> {
    /// Reads a line, given without its line feed.
    pub fn of(line: &'a [u8]) -> Result<Self, Damage> {
        let line = unsealed(line)?;
        match format(line).ok_or(Damage::NoRecord)? {
            FORMAT => parsed(line),
            found => Err(Damage::Format { found }),
        }
    }

    /// What it says, in the words of its kind.
    pub fn entry(&self) -> Result<Entry, Damage> {
        Entry::read(&self.kind, self.data.get())
    }

    /// Its id and its time.
    pub fn stamp(self) -> Stamp {
        Stamp { id: self.id, time: self.t }
    }
}

/// `body`, a record without its closing brace, with its checksum.
pub(crate) fn sealed(body: &str) -> String {
    [body, SEAL, &hex(crc32fast::hash(body.as_bytes())), END].concat()
}

/// The line as it was before it was sealed.
pub(crate) fn body(line: &str) -> Option<&str> {
    line.rsplit_once(SEAL).map(|(body, _)| body)
}

/// Whether a line with a wrong checksum looks as if it was cut off while it was written, and was not changed later.
///
/// What a disk did not write of a line is missing at its end or full of zeros, and no record holds those.
pub(crate) fn half_written(line: &[u8]) -> bool {
    line.contains(&0) || !line.ends_with(END.as_bytes())
}

/// The line, once its checksum has proved to be right.
fn unsealed(line: &[u8]) -> Result<&str, Damage> {
    let text = str::from_utf8(line).map_err(|_| Damage::Checksum)?;
    let (body, seal) = text.rsplit_once(SEAL).ok_or(Damage::NoRecord)?;
    let stated = seal.strip_suffix(END).ok_or(Damage::NoRecord)?;
    // Compared as text: a checksum has one spelling, so a changed letter of it is noticed too.
    if stated == hex(crc32fast::hash(body.as_bytes())) { Ok(text) } else { Err(Damage::Checksum) }
}

/// The format that a line states as its first member, which it is in every format.
fn format(line: &str) -> Option<u64> {
    line.strip_prefix(LINE_BEGINS)?.split(',').next()?.parse().ok()
}

/// What a text of JSON says.
pub(crate) fn parsed<'t, T: Deserialize<'t>>(text: &'t str) -> Result<T, Damage> {
    serde_json::from_str(text).map_err(|error| Damage::Content { reason: reason(&error) })
}
