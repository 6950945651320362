//! A journal on the disk.

use std::mem::replace;
use std::path::{Path, PathBuf};

use crate::chain::{Chain, LONGEST_LINE};
use crate::lock::Lock;
use crate::reading::{Extent, Reading};
use crate::recent::settles;
use crate::whole_file::put;
use crate::{
    Confirmed, Disk, Entry, Existing, Fault, JournalError, NewEntry, Record, RedoEntry, Stamp,
    State, Storage, Torn, UndoEntry, What, journal_file,
};

/// A journal as it was when it was opened or last written to.
#[derive(Debug)]
pub struct Journal<S = Disk> {
    storage: S,
    path: PathBuf,
    reading: Reading,
}

impl Journal {
    /// Begins a journal in the new file `path`, and opens it.
    ///
    /// # Errors
    /// [`JournalError::Refused`] for an impossible beginning, [`JournalError::Exists`] where a file stands already,
    /// and what the system refuses.
    pub fn create(path: &Path, beginning: NewEntry, stamp: &Stamp) -> Result<Self, JournalError> {
        Self::create_on(Disk, path, beginning, stamp)
    }

    /// Reads the journal `path`; it is not changed, and a writer is neither waited for nor kept waiting.
    ///
    /// # Errors
    /// [`JournalError::Damaged`] with the first damaged line, and what the system refuses.
    pub fn open(path: &Path) -> Result<Self, JournalError> {
        Self::open_on(Disk, path)
    }

    /// Opens the journal `path` to add to it. Of a long one only the first record and the last ones are read, as long as
    /// that is enough, and [`state`](Self::state) then knows no more.
    ///
    /// # Errors
    /// As [`open`](Self::open).
    pub fn open_to_add(path: &Path) -> Result<Self, JournalError> {
        Self::open_to_add_on(Disk, path)
    }
}

impl<S: Storage> Journal<S> {
    /// [`create`](Journal::create) on any storage.
    ///
    /// # Errors
    /// As there.
    pub fn create_on(
        storage: S,
        path: &Path,
        mut beginning: NewEntry,
        stamp: &Stamp,
    ) -> Result<Self, JournalError> {
        beginning.make_explicit();
        let refused = |fault| JournalError::Refused { faults: vec![fault] };
        beginning.can_be_served().map_err(refused)?;
        beginning.setup().map_err(refused)?;
        beginning.policy().map_err(refused)?;
        let line = line(path, Chain::default(), stamp, &Entry::New(beginning))?;
        let written = put(&storage, path, line.as_bytes(), Existing::Keep);
        written.map_err(|error| error.of_journal(path))?;
        Self::open_on(storage, path)
    }

    /// [`open`](Journal::open) on any storage.
    ///
    /// # Errors
    /// As there.
    pub fn open_on(storage: S, path: &Path) -> Result<Self, JournalError> {
        Self::read(storage, path, Reading::whole)
    }

    /// [`open_to_add`](Journal::open_to_add) on any storage.
    ///
    /// # Errors
    /// As there.
    pub fn open_to_add_on(storage: S, path: &Path) -> Result<Self, JournalError> {
        Self::read(storage, path, Reading::recent)
    }

    fn read(
        storage: S,
        path: &Path,
        read: impl Fn(&S, &Path) -> Result<Reading, JournalError>,
    ) -> Result<Self, JournalError> {
        let reading = read(&storage, path)?;
        Ok(Self { storage, path: path.to_owned(), reading })
    }

    /// What the journal says.
    pub fn state(&self) -> &State {
        &self.reading.state
    }

    /// What stands after its last whole record, if anything does; the next entry moves it aside.
    pub fn torn(&self) -> Option<Torn> {
        let bytes = self.reading.torn;
        (bytes > 0).then_some(Torn { bytes })
    }

    /// Adds an entry; when this returns, it survives a power cut.
    ///
    /// # Errors
    /// [`JournalError::Refused`] for an entry that cannot be, [`JournalError::Busy`] while another program writes,
    /// [`JournalError::NotRecorded`] and [`JournalError::NotConfirmed`] where the disk fails, and what else the
    /// system refuses.
    pub fn append(&mut self, entry: Entry, stamp: &Stamp) -> Result<Confirmed, JournalError> {
        let _lock = self.lock()?;
        self.write(entry, stamp)
    }

    /// Takes back the last entry that stands, of whatever kind but the first.
    ///
    /// # Errors
    /// [`JournalError::NothingToUndo`] if there is none, else as [`append`](Self::append).
    pub fn undo(&mut self, stamp: &Stamp) -> Result<Confirmed, JournalError> {
        let _lock = self.lock()?;
        if self.state().last_number().is_none() {
            self.know_all()?;
        }
        let last = self.state().last_number();
        let seq = last.ok_or_else(|| JournalError::NothingToUndo { path: self.path.clone() })?;
        self.write(Entry::Undo(UndoEntry { seq }), stamp)
    }

    /// Brings back the entry that was taken back last, as long as nothing else was entered since.
    ///
    /// # Errors
    /// [`JournalError::NothingToRedo`] if there is none, else as [`append`](Self::append).
    pub fn redo(&mut self, stamp: &Stamp) -> Result<Confirmed, JournalError> {
        let _lock = self.lock()?;
        if self.state().last_taken().is_none() {
            self.know_all()?;
        }
        let last = self.state().last_taken();
        let seq = last.ok_or_else(|| JournalError::NothingToRedo { path: self.path.clone() })?;
        self.write(Entry::Redo(RedoEntry { seq }), stamp)
    }

    /// Every record of the journal, those taken back included, read again from the disk.
    ///
    /// # Errors
    /// As [`open`](Self::open).
    pub fn records(&self) -> Result<Vec<Record>, JournalError> {
        let mut records = Vec::new();
        Reading::watched(&self.storage, &self.path, |record| records.push(record.clone()))?;
        Ok(records)
    }

    /// Keeps others from writing, and reads what they wrote since.
    fn lock(&mut self) -> Result<Lock<S::File>, JournalError> {
        let Self { storage, path, reading } = self;
        let file = storage.resolve(path).map_err(JournalError::io("look at", path))?;
        let lock = Lock::take(storage, &file)?;
        if !reading.is_current(storage, path)? {
            *reading = match reading.extent {
                Extent::Whole => Reading::whole(storage, path)?,
                Extent::Recent => Reading::recent(storage, path)?,
            };
        }
        Ok(lock)
    }

    /// Reads everything, where only the end was read.
    fn know_all(&mut self) -> Result<(), JournalError> {
        if self.reading.extent == Extent::Recent {
            self.reading = Reading::whole(&self.storage, &self.path)?;
        }
        Ok(())
    }

    fn write(&mut self, mut entry: Entry, stamp: &Stamp) -> Result<Confirmed, JournalError> {
        if !settles(self.state(), &entry) {
            self.know_all()?;
        }
        let Self { storage, path, reading } = self;
        let refused = |faults| JournalError::Refused { faults };
        let effect = reading.state.accept(&mut entry, &stamp.time).map_err(refused)?;
        let chain = reading.state.chain();
        let line = line(path, chain, stamp, &entry)?;
        let torn_kept = match reading.torn {
            0 => None,
            _ => Some(journal_file::set_aside(storage, path, reading.length)?),
        };
        reading.torn = 0;
        journal_file::append(storage, path, reading.length, line.as_bytes())
            .map_err(|error| error.of_journal(path))?;
        reading.last = line.len() as u64;
        reading.length += reading.last;
        let chain = chain.after(line.trim_end().as_bytes());
        let recalled = reading.state.apply(effect, chain);
        let before = replace(&mut reading.time, stamp.time.clone());
        let later = (before.seconds() > stamp.time.seconds()).then_some(before);
        let record = Record { seq: chain.seq, stamp: stamp.clone(), entry };
        Ok(Confirmed { record, recalled, later, torn_kept })
    }
}

/// The line that holds `entry`, with its line feed.
fn line(path: &Path, chain: Chain, stamp: &Stamp, entry: &Entry) -> Result<String, JournalError> {
    let line = chain.write(stamp, entry).map_err(|error| JournalError::NotRecorded {
        path: path.to_owned(),
        source: error.into(),
    })?;
    let bytes = line.len();
    if bytes > LONGEST_LINE {
        let fault = Fault::whole(What::TooLong { bytes, most: LONGEST_LINE });
        return Err(JournalError::Refused { faults: vec![fault] });
    }
    Ok(line + "\n")
}
