//! What a check of a journal proved.

use std::path::Path;

use crate::reading::Reading;
use crate::{Disk, Entry, JournalError, Record, Stamp, Timestamp, Torn};

/// A journal that is whole: the checksum of every line is right, every line was written after the one before it, and
/// every record says what can be.
#[derive(Clone, Debug, PartialEq)]
pub struct Checked {
    /// The bytes of its records.
    pub bytes: u64,
    /// How many records of each kind it has, those taken back included, in the order in which they first come.
    pub kinds: Vec<(&'static str, u64)>,
    /// How many shots they have.
    pub shots: u64,
    /// How many entries stand, without the first and without what was taken back.
    pub standing: usize,
    /// The number of the last record.
    pub records: u64,
    /// Its id and its time.
    pub last: Stamp,
    /// The numbers of records that have an earlier time than the one before them: a clock was set back.
    pub earlier: Vec<u64>,
    /// What stands after the last record and is none.
    pub torn: Option<Torn>,
}

/// What is counted while a journal is read.
#[derive(Default)]
struct Count {
    kinds: Vec<(&'static str, u64)>,
    shots: u64,
    last: Option<Stamp>,
    earlier: Vec<u64>,
}

impl Checked {
    /// Checks every byte of the journal `path`; nothing is changed, and a writer is not kept waiting.
    ///
    /// # Errors
    /// [`JournalError::Damaged`] with the first line that is not right, and what the system refuses.
    pub fn of(path: &Path) -> Result<Self, JournalError> {
        let mut count = Count::default();
        let reading = Reading::watched(&Disk, path, |record| count.see(record))?;
        let last = count.last.ok_or_else(|| JournalError::NotBegun { path: path.to_owned() })?;
        let state = reading.state;
        Ok(Self {
            bytes: reading.length,
            kinds: count.kinds,
            shots: count.shots,
            standing: state.standing(),
            records: state.records(),
            last,
            earlier: count.earlier,
            torn: (reading.torn > 0).then_some(Torn { bytes: reading.torn }),
        })
    }
}

impl Count {
    fn see(&mut self, record: &Record) {
        let kind = record.entry.kind();
        match self.kinds.iter_mut().find(|(known, _)| *known == kind) {
            Some((_, count)) => *count += 1,
            None => self.kinds.push((kind, 1)),
        }
        self.shots += match &record.entry {
            Entry::End(end) => end.shots.len() as u64,
            Entry::Group(group) => group.shots.len() as u64,
            _ => 0,
        };
        let seconds = |stamp: &Stamp| Timestamp::seconds(&stamp.time);
        if self.last.as_ref().is_some_and(|last| seconds(last) > seconds(&record.stamp)) {
            self.earlier.push(record.seq);
        }
        self.last = Some(record.stamp.clone());
    }
}
