//! A journal on the disk.

use std::path::{Path, PathBuf};

use crate::chain::{Chain, LONGEST_LINE};
use crate::lock::Lock;
use crate::reading::Reading;
use crate::records::records;
use crate::{
    Confirmed, Entry, Fault, JournalError, NewEntry, Record, RedoEntry, Stamp, State, Torn,
    UndoEntry, What, disk,
};

/// A journal as it was when it was opened or last written to.
#[derive(Debug)]
pub struct Journal {
    path: PathBuf,
    reading: Reading,
}

impl Journal {
    /// Begins a journal in the new file `path`, and opens it.
    ///
    /// # Errors
    /// [`JournalError::Refused`] for an impossible beginning, [`JournalError::Exists`] where a file stands already,
    /// and what the system refuses.
    pub fn create(
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
        disk::create(path, line.as_bytes())?;
        Self::open(path)
    }

    /// Reads the journal `path`; it is not changed, and a writer is neither waited for nor kept waiting.
    ///
    /// # Errors
    /// [`JournalError::Damaged`] with the first damaged line, and what the system refuses.
    pub fn open(path: &Path) -> Result<Self, JournalError> {
        Ok(Self { path: path.to_owned(), reading: Reading::of(path)? })
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
        let last = self.state().last_taken();
        let seq = last.ok_or_else(|| JournalError::NothingToRedo { path: self.path.clone() })?;
        self.write(Entry::Redo(RedoEntry { seq }), stamp)
    }

    /// Every record of the journal, those taken back included, read again from the disk.
    ///
    /// # Errors
    /// As [`open`](Self::open).
    pub fn records(&self) -> Result<Vec<Record>, JournalError> {
        records(&self.path)
    }

    /// Keeps others from writing, and reads what they wrote since.
    fn lock(&mut self) -> Result<Lock, JournalError> {
        let lock = Lock::take(&self.path)?;
        if !self.is_current()? {
            self.reading = Reading::of(&self.path)?;
        }
        Ok(lock)
    }

    /// Whether the file still ends as it was read: only its end is looked at, however long it is.
    fn is_current(&self) -> Result<bool, JournalError> {
        let Reading { state, length, last, torn } = &self.reading;
        if disk::length(&self.path)? != length + torn {
            return Ok(false);
        }
        let line = disk::bytes(&self.path, length - last, *last)?;
        Ok(line.strip_suffix(b"\n").is_some_and(|line| state.chain().ends_with(line)))
    }

    fn write(&mut self, mut entry: Entry, stamp: &Stamp) -> Result<Confirmed, JournalError> {
        let Self { path, reading } = self;
        let refused = |faults| JournalError::Refused { faults };
        let effect = reading.state.accept(&mut entry, &stamp.time).map_err(refused)?;
        let chain = reading.state.chain();
        let line = line(path, chain, stamp, &entry)?;
        let torn_kept = match reading.torn {
            0 => None,
            _ => Some(disk::set_aside(path, reading.length)?),
        };
        reading.torn = 0;
        disk::append(path, reading.length, line.as_bytes())?;
        reading.last = line.len() as u64;
        reading.length += reading.last;
        let chain = chain.after(line.trim_end().as_bytes());
        let recalled = reading.state.apply(effect, chain);
        let record = Record { seq: chain.seq, stamp: stamp.clone(), entry };
        Ok(Confirmed { record, recalled, torn_kept })
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
