//! The chain of records: every line carries its own checksum and that of the line before.

use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;

use crate::json_reason::reason;
use crate::{Damage, Entry, Record, RecordId, Stamp, Timestamp};

/// The format that is written, and the newest that is read.
pub(crate) const FORMAT: u64 = 1;

/// The longest line, in bytes without its end: more is not a record but a mistake.
pub(crate) const LONGEST_LINE: usize = 65_536;

/// What stands between the checksummed bytes of a line and its checksum.
const SEAL: &str = ",\"crc\":\"";

/// Where a chain of records ends, and so how the next one must begin.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(crate) struct Chain {
    /// The number of the last record; 0 before the first.
    pub seq: u64,
    /// The CRC-32 of its whole line, without the line feed; 0 before the first.
    pub crc: u32,
}

#[derive(Serialize)]
struct Written<'a> {
    v: u64,
    seq: u64,
    id: RecordId,
    t: &'a Timestamp,
    kind: &'static str,
    data: &'a Entry,
    prev: String,
}

#[derive(Deserialize)]
struct Read<'a> {
    seq: u64,
    id: RecordId,
    t: Timestamp,
    kind: String,
    #[serde(borrow)]
    data: &'a RawValue,
    prev: String,
}

impl Chain {
    /// The next line of the chain, without its line feed.
    pub fn write(self, stamp: &Stamp, entry: &Entry) -> serde_json::Result<String> {
        let mut line = serde_json::to_string(&Written {
            v: FORMAT,
            seq: self.seq + 1,
            id: stamp.id,
            t: &stamp.time,
            kind: entry.kind(),
            data: entry,
            prev: hex(self.crc),
        })?;
        // The closing brace comes after the checksum, which covers everything before itself.
        line.pop();
        let crc = hex(crc32fast::hash(line.as_bytes()));
        Ok([&line, SEAL, &crc, "\"}"].concat())
    }

    /// The record in the next line of the chain, given without its line feed.
    pub fn read(self, line: &[u8]) -> Result<Record, Damage> {
        let line = unsealed(line)?;
        match format(line).ok_or(Damage::NoRecord)? {
            FORMAT => {}
            found => return Err(Damage::Format { found }),
        }
        let read: Read = parsed(line)?;
        let expected = self.seq + 1;
        if read.seq != expected {
            return Err(Damage::Number { found: read.seq, expected });
        }
        if read.prev != hex(self.crc) {
            return Err(Damage::Exchanged);
        }
        let entry = Entry::read(&read.kind, read.data.get())?;
        Ok(Record { seq: read.seq, stamp: Stamp { id: read.id, time: read.t }, entry })
    }

    /// Whether the chain ends with `line`.
    pub fn ends_with(self, line: &[u8]) -> bool {
        crc32fast::hash(line) == self.crc
    }

    /// The chain after `line`.
    pub fn after(self, line: &[u8]) -> Self {
        Self { seq: self.seq + 1, crc: crc32fast::hash(line) }
    }
}

/// The line, once its checksum has proved to be right.
fn unsealed(line: &[u8]) -> Result<&str, Damage> {
    let text = str::from_utf8(line).map_err(|_| Damage::Checksum)?;
    let (body, seal) = text.rsplit_once(SEAL).ok_or(Damage::NoRecord)?;
    let stated = seal.strip_suffix("\"}").ok_or(Damage::NoRecord)?;
    // Compared as text: a checksum has one spelling, so a changed letter of it is noticed too.
    if stated == hex(crc32fast::hash(body.as_bytes())) { Ok(text) } else { Err(Damage::Checksum) }
}

/// The format that a line states as its first member, which it is in every format.
fn format(line: &str) -> Option<u64> {
    line.strip_prefix("{\"v\":")?.split(',').next()?.parse().ok()
}

pub(crate) fn parsed<'t, T: Deserialize<'t>>(text: &'t str) -> Result<T, Damage> {
    serde_json::from_str(text).map_err(|error| Damage::Content { reason: reason(&error) })
}

fn hex(crc: u32) -> String {
    format!("{crc:08x}")
}
