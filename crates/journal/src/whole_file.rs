//! Files that come to be whole or not at all.

use std::fs::{self, File};
use std::io::{self, ErrorKind, Read};
use std::path::{Path, PathBuf};
use std::process;

use crate::beside::{beside, numbered};
use crate::journal_file::write_at_end;
use crate::sealed::LINE_BEGINS;
use crate::{Disk, Existing, Storage, StoredFile, WriteError};

/// Writes the file `path` on this computer's disk, whole or not at all, so that it survives a power cut.
///
/// It is written beside its place and then put there in one step. Only a plain file is ever replaced, and never a
/// journal: no link is followed, no device written to.
///
/// # Errors
/// [`WriteError::Exists`] where a file stands that must be kept, [`WriteError::NotPlain`], [`WriteError::Journal`], and what
/// the system says.
pub fn write_whole(path: &Path, bytes: &[u8], existing: Existing) -> Result<(), WriteError> {
    match fs::symlink_metadata(path) {
        Ok(_) if existing == Existing::Keep => Err(WriteError::Exists),
        Ok(file) if !file.is_file() => Err(WriteError::NotPlain),
        Ok(_) if is_journal(path).map_err(WriteError::Nothing)? => Err(WriteError::Journal),
        _ => put(&Disk, path, bytes, existing),
    }
}

/// Whether a file begins as every line of every journal does, damaged or not.
fn is_journal(path: &Path) -> io::Result<bool> {
    let mut begins = Vec::new();
    File::open(path)?.take(LINE_BEGINS.len() as u64).read_to_end(&mut begins)?;
    Ok(begins == LINE_BEGINS.as_bytes())
}

/// The same on any storage, where only plain files stand in the way.
pub(crate) fn put<S: Storage>(
    storage: &S,
    path: &Path,
    bytes: &[u8],
    existing: Existing,
) -> Result<(), WriteError> {
    let part = filled(storage, path, bytes).map_err(WriteError::Nothing)?;
    storage.rename(&part, path, existing).map_err(|error| {
        // It cannot be told that nothing is left where the rest of it cannot be removed.
        let left = storage.remove(&part).is_err();
        match error.kind() {
            ErrorKind::AlreadyExists => WriteError::Exists,
            _ if left => WriteError::Uncertain(error),
            _ => WriteError::Nothing(error),
        }
    })?;
    storage.sync_folder(path).map_err(WriteError::Uncertain)
}

/// Writes `bytes` to the first of `name.kind-1`, `name.kind-2`, ... that is free, and says which.
pub(crate) fn put_numbered<S: Storage>(
    storage: &S,
    path: &Path,
    kind: &str,
    bytes: &[u8],
) -> Result<PathBuf, WriteError> {
    for kept in numbered(path, kind) {
        match put(storage, &kept, bytes, Existing::Keep) {
            Ok(()) => return Ok(kept),
            Err(WriteError::Exists) => {}
            Err(error) => return Err(error),
        }
    }
    Err(WriteError::Exists)
}

/// A new file beside `path` with these bytes, synced; nothing is left of it where that fails.
fn filled<S: Storage>(storage: &S, path: &Path, bytes: &[u8]) -> io::Result<PathBuf> {
    let (part, mut file) = part(storage, path)?;
    match write_at_end(&mut file, 0, bytes).and_then(|()| file.sync()) {
        Ok(()) => Ok(part),
        Err(error) => {
            drop(file);
            // Nothing more can be done about it: the disk has just failed.
            let _ = storage.remove(&part);
            Err(error)
        }
    }
}

/// A new file beside `path` that nobody else writes to.
fn part<S: Storage>(storage: &S, path: &Path) -> io::Result<(PathBuf, S::File)> {
    let own = beside(path, &process::id().to_string());
    for part in numbered(&own, "part") {
        match storage.create(&part) {
            Err(error) if error.kind() == ErrorKind::AlreadyExists => {}
            created => return created.map(|file| (part, file)),
        }
    }
    Err(ErrorKind::AlreadyExists.into())
}
