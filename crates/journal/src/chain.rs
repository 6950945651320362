//! The chain of records: every line carries its own checksum and that of the line before.

use serde::Serialize;

use crate::sealed::{Sealed, sealed};
use crate::{Damage, Entry, Record, RecordId, Stamp, Timestamp};

/// The format of journals that is written, and the newest that is read.
pub const FORMAT: u64 = 1;

/// The longest line, in bytes without its end: more is not a record but a mistake.
pub(crate) const LONGEST_LINE: usize = 65_536;

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

impl Chain {
    /// The next line of the chain, without its line feed.
    pub fn write(self, stamp: &Stamp, entry: &Entry) -> serde_json::Result<String> {
        let mut line = serde_json::to_string(&Written {
            v: FORMAT,
            seq: self.next_seq(),
            id: stamp.id,
            t: &stamp.time,
            kind: entry.kind(),
            data: entry,
            prev: hex(self.crc),
        })?;
        // The closing brace comes after the checksum, which covers everything before itself.
        line.pop();
        Ok(sealed(&line))
    }

    /// The record in the next line of the chain, given without its line feed.
    pub fn read(self, line: &[u8]) -> Result<Record, Damage> {
        let read = Sealed::of(line)?;
        let (found, expected) = (read.seq, self.next_seq());
        if found != expected {
            return Err(Damage::Number { found, expected });
        }
        if !self.is_before(&read) {
            return Err(Damage::Exchanged);
        }
        let entry = read.entry()?;
        Ok(Record { seq: read.seq, stamp: read.stamp(), entry })
    }

    /// The number of the next record. A line may state the greatest number there is; no journal gets there.
    fn next_seq(self) -> u64 {
        self.seq.saturating_add(1)
    }

    /// Whether `line` was written as the next of this chain.
    pub fn is_before(self, line: &Sealed) -> bool {
        line.seq == self.next_seq() && line.prev == hex(self.crc)
    }

    /// The chain that `line` was written after, by what it states itself.
    pub fn stated_by(line: &Sealed) -> Option<Self> {
        let crc = u32::from_str_radix(&line.prev, 16).ok()?;
        Some(Self { seq: line.seq.checked_sub(1)?, crc })
    }

    /// Whether the chain ends with `line`.
    pub fn ends_with(self, line: &[u8]) -> bool {
        crc32fast::hash(line) == self.crc
    }

    /// The chain after `line`.
    pub fn after(self, line: &[u8]) -> Self {
        Self { seq: self.next_seq(), crc: crc32fast::hash(line) }
    }
}

/// A checksum as it is written: eight hexadecimal digits in small letters.
pub(crate) fn hex(crc: u32) -> String {
    format!("{crc:08x}")
}
