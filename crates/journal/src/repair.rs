//! Mends a damaged journal on the disk: whole or not at all, with the damaged one kept.

use std::io::ErrorKind;
use std::path::{Path, PathBuf};

use crate::beside::numbered;
use crate::journal_file::bytes;
use crate::lock::Lock;
use crate::mending::Mending;
use crate::whole_file::put;
use crate::{Damage, Disk, Existing, Finding, JournalError, Stamp, Storage, Torn};

/// What is wrong with a journal and what a repair makes of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Repair {
    /// Everything that is wrong; nothing where the journal is whole, and then there is nothing to do.
    pub findings: Vec<Finding>,
    /// How many records are kept, each with its number and its words.
    pub kept: u64,
    /// The numbers of the records that are lost: an entry that says so stands in the place of each.
    pub lost: Vec<u64>,
    /// What stands after the last line.
    pub torn: Option<Torn>,
    /// The file that keeps the journal as it was.
    pub original: PathBuf,
}

impl Repair {
    /// Says what would be done about the journal `path`; nothing is changed. The time of `stamp` would be that of the
    /// entries for what is lost, and their ids would go on from its own.
    ///
    /// # Errors
    /// [`JournalError::Damaged`] where the first record is lost or a newer program wrote some of it, and what the
    /// system refuses.
    pub fn plan(path: &Path, stamp: &Stamp) -> Result<Self, JournalError> {
        Self::plan_on(&Disk, path, stamp)
    }

    /// [`plan`](Self::plan) on any storage.
    ///
    /// # Errors
    /// As there.
    pub fn plan_on<S: Storage>(
        storage: &S,
        path: &Path,
        stamp: &Stamp,
    ) -> Result<Self, JournalError> {
        planned(storage, path, stamp).map(|(repair, _)| repair)
    }

    /// Does it.
    ///
    /// # Errors
    /// As [`plan`](Self::plan), [`JournalError::Busy`] while another program writes, and
    /// [`JournalError::NotRecorded`] and [`JournalError::NotConfirmed`] where the disk fails: the journal is then as it
    /// was, or mended.
    pub fn carry_out(path: &Path, stamp: &Stamp) -> Result<Self, JournalError> {
        Self::carry_out_on(&Disk, path, stamp)
    }

    /// [`carry_out`](Self::carry_out) on any storage.
    ///
    /// # Errors
    /// As there.
    pub fn carry_out_on<S: Storage>(
        storage: &S,
        path: &Path,
        stamp: &Stamp,
    ) -> Result<Self, JournalError> {
        let path = &storage.resolve(path).map_err(JournalError::io("look at", path))?;
        let _lock = Lock::take(storage, path)?;
        let (repair, mended) = planned(storage, path, stamp)?;
        if !repair.findings.is_empty() {
            let damaged = bytes(storage, path, 0)?;
            let kept = put(storage, &repair.original, &damaged, Existing::Keep);
            kept.map_err(|error| error.of_journal(path))?;
            let mended = put(storage, path, &mended, Existing::Replace);
            mended.map_err(|error| error.of_journal(path))?;
        }
        Ok(repair)
    }
}

/// What would be done, and the mended journal.
fn planned<S: Storage>(
    storage: &S,
    path: &Path,
    stamp: &Stamp,
) -> Result<(Repair, Vec<u8>), JournalError> {
    let damaged = bytes(storage, path, 0)?;
    let original = free(storage, path)?;
    let name = original.file_name().unwrap_or_default().to_string_lossy();
    let mending = Mending::of(&damaged, stamp, &name).map_err(|damage| match damage {
        Damage::NoBeginning => JournalError::NoBeginning { path: path.to_owned() },
        damage => JournalError::Newer { path: path.to_owned(), damage },
    })?;
    let Mending { text, findings, kept, lost, torn: bytes, .. } = mending;
    let torn = (bytes > 0).then_some(Torn { bytes });
    drop(name);
    Ok((Repair { findings, kept, lost, torn, original }, text))
}

/// A name beside the journal that no file has.
fn free<S: Storage>(storage: &S, path: &Path) -> Result<PathBuf, JournalError> {
    for name in numbered(path, "before-repair") {
        match storage.open(&name) {
            Ok(_) => {}
            Err(error) if error.kind() == ErrorKind::NotFound => return Ok(name),
            Err(error) => return Err(JournalError::io("look at", &name)(error)),
        }
    }
    Err(JournalError::Exists { path: path.to_owned() })
}
